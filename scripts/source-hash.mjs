// One digest over everything that goes into the built files, by content: a changed clock changes nothing.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const SOURCES = [
  "kernels",
  "core",
  "app",
  "adapters",
  "apps",
  "demo",
  "package.json",
  "package-lock.json",
  "vite.config.ts",
  "tsconfig.base.json",
  "tsconfig.json",
  "scripts/build.mjs",
  "scripts/bundle-for-node.mjs",
];

/** Holds the digest of the sources that dist was built from. */
export const BUILT_MARK = join(root, "dist/.built-from");

export function sourceHash() {
  const hash = createHash("sha256");
  for (const source of SOURCES) add(hash, source);
  return hash.digest("hex");
}

export function isBuilt() {
  const parts = ["dist/server/hallful.mjs", "dist/cli/hallful.mjs"];
  if (!parts.every((it) => existsSync(join(root, it)))) return false;
  return existsSync(BUILT_MARK) && readFileSync(BUILT_MARK, "utf8") === sourceHash();
}

function add(hash, path) {
  const full = join(root, path);
  if (!existsSync(full)) return;
  if (!statSync(full).isDirectory()) {
    if (!/\.test\.tsx?$/.test(path)) hash.update(`${path}\0`).update(readFileSync(full)).update("\0");
    return;
  }
  for (const name of readdirSync(full).sort()) add(hash, `${path}/${name}`);
}
