// Runs a benchmark of bench/ by its name: npm run bench -- fit --json
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const [name, ...rest] = process.argv.slice(2);
const entry = join(root, "bench", `${name}.ts`);
if (name === undefined || !existsSync(entry)) {
  console.error(`Which benchmark? One of: ${entries().join(", ")}. For example: npm run bench -- fit --json`);
  process.exit(2);
}
const outfile = join(root, "dist", "bench", `${name}.mjs`);
await bundle();
const run = spawnSync(process.execPath, [outfile, ...rest], { stdio: "inherit", cwd: root });
process.exit(run.status ?? 1);

/** A file that says how it is run starts a benchmark; the others are parts of one. */
function entries() {
  return readdirSync(join(root, "bench"))
    .filter((file) => file.endsWith(".ts"))
    .map((file) => file.slice(0, -3))
    .filter((name) =>
      readFileSync(join(root, "bench", `${name}.ts`), "utf8").includes(`npm run bench -- ${name}`),
    );
}

async function bundle() {
  const { build } = await import("esbuild");
  await build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    logLevel: "warning",
  });
}
