// Everything that runs, from the sources: the server and the command line by esbuild, the screens by Vite.
import { existsSync, rmSync, writeFileSync } from "node:fs";
import { bundleForNode } from "./bundle-for-node.mjs";
import { root } from "./root.mjs";
import { BUILT_MARK, sourceHash } from "./source-hash.mjs";

process.chdir(root);

// taken before the build, so that what is changed meanwhile is built again
const hash = sourceHash();
rmSync(BUILT_MARK, { force: true });
await Promise.all([bundleForNode("server", "dist/server"), bundleForNode("cli", "dist/cli"), buildScreens()]);
writeFileSync(BUILT_MARK, hash);

async function buildScreens() {
  if (!existsSync("apps/web/index.html")) {
    console.log(
      "There are no screens here (apps/web/index.html); the server and the command line are built.",
    );
    return;
  }
  const { build } = await import("vite");
  await build({ logLevel: "warn" });
}
