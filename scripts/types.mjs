// Types, four views of the tree: the pure part sees neither Node nor the DOM, so a leak is a type error.
import { spawnSync } from "node:child_process";

const compiler = "node_modules/typescript7/bin/tsc";
let failed = false;
for (const view of ["pure", "node", "web", "browser"]) {
  const run = spawnSync(process.execPath, [compiler, "-p", `tsconfig.${view}.json`], { stdio: "inherit" });
  if (run.status !== 0) failed = true;
}
process.exit(failed ? 1 : 0);
