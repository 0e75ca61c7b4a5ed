import { execFileSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "..");

/** The server or the command line as it is shipped, built for one test file; `remove` takes it away again. */
export function built(part: "server" | "cli"): { readonly script: string; readonly remove: () => void } {
  const folder = join("dist", `trial-${part}-${process.pid}`);
  execFileSync(process.execPath, ["scripts/bundle-for-node.mjs", part, folder], { cwd: root });
  const made = join(root, folder);
  return {
    script: join(made, "hallful.mjs"),
    remove: () => rmSync(made, { recursive: true, force: true }),
  };
}
