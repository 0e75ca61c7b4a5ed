// The server or the command line as files that Node runs: node scripts/bundle-for-node.mjs cli dist/cli
import { chmodSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const entries = { server: "apps/server/main.ts", cli: "apps/cli/main.ts" };

// packages written for require() find it made from the place of the bundle
const banner =
  'import { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);';

/**
 * Writes hallful.mjs and its parts, beside the old ones until they are whole. better-sqlite3 stays outside: it
 * carries a compiled part; highs finds its wasm beside itself; pdfkit too, because few commands print, and pg,
 * because few keep their data in PostgreSQL.
 */
export async function bundleForNode(part, folder) {
  const { build } = await import("esbuild");
  const outdir = join(root, `${folder}-new-${process.pid}`);
  await build({
    absWorkingDir: root,
    entryPoints: { hallful: entries[part] },
    outdir,
    bundle: true,
    splitting: true,
    platform: "node",
    format: "esm",
    target: "node20",
    outExtension: { ".js": ".mjs" },
    external: ["better-sqlite3", "highs", "pdfkit", "pg"],
    banner: { js: banner },
    sourcemap: true,
    logLevel: "warning",
  });
  chmodSync(join(outdir, "hallful.mjs"), 0o755);
  rmSync(join(root, folder), { recursive: true, force: true });
  renameSync(outdir, join(root, folder));
}

const [script = "", part, folder] = process.argv.slice(1);
if (script.endsWith("bundle-for-node.mjs")) await bundleForNode(part, folder);
