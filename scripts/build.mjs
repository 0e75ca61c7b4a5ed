// Everything that runs, from the sources: the server and the command line by esbuild, the screens by Vite.
import { chmodSync, existsSync, rmSync, writeFileSync } from "node:fs";
import { root } from "./root.mjs";
import { BUILT_MARK, sourceHash } from "./source-hash.mjs";

process.chdir(root);

const hash = sourceHash();
rmSync(BUILT_MARK, { force: true });
await Promise.all([bundleForNode(), buildScreens()]);
writeFileSync(BUILT_MARK, hash);

/** better-sqlite3 stays outside: it carries a compiled part. */
async function bundleForNode() {
  const { build } = await import("esbuild");
  for (const folder of ["dist/server", "dist/cli"]) rmSync(folder, { recursive: true, force: true });
  const shared = {
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    outExtension: { ".js": ".mjs" },
    external: ["better-sqlite3"],
    sourcemap: true,
    logLevel: "warning",
  };
  // packages written for require() find it made from the place of the bundle
  const requireBanner =
    'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);';
  await build({
    ...shared,
    entryPoints: { hallful: "apps/server/main.ts" },
    outdir: "dist/server",
    banner: { js: requireBanner },
  });
  if (!existsSync("apps/cli/main.ts")) return;
  await build({
    ...shared,
    entryPoints: { hallful: "apps/cli/main.ts" },
    outdir: "dist/cli",
    splitting: true,
    banner: { js: requireBanner },
  });
  chmodSync("dist/cli/hallful.mjs", 0o755);
}

async function buildScreens() {
  if (!existsSync("apps/web/index.html")) {
    console.log(
      "There are no screens yet (apps/web/index.html): only the server and the command line are built.",
    );
    return;
  }
  const { build } = await import("vite");
  await build({ logLevel: "warn" });
}
