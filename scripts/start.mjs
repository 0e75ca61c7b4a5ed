// One command from a fresh clone: installs and builds when there is something new, then starts.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { installIfNeeded } from "./install-if-needed.mjs";
import { nodeIsNewEnough } from "./node-version.mjs";
import { root } from "./root.mjs";
import { isBuilt } from "./source-hash.mjs";

if (!nodeIsNewEnough() || !installIfNeeded() || !build()) process.exit(2);
await import("../dist/server/hallful.mjs");

function build() {
  if (isBuilt()) return true;
  console.log("Building. This takes a few seconds.");
  const run = spawnSync(process.execPath, [join(root, "scripts/build.mjs")], { stdio: "inherit" });
  if (run.status === 0) return true;
  console.error("Hallful could not be built; the message above says where.");
  return false;
}
