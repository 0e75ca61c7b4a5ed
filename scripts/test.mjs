// `npm test` on a fresh clone: sets up what the checks need, then runs them all. Node built-ins only.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { findChromium } from "./chromium.mjs";
import { installIfNeeded } from "./install-if-needed.mjs";
import { nodeIsNewEnough } from "./node-version.mjs";
import { root } from "./root.mjs";
import { isBuilt } from "./source-hash.mjs";

if (!nodeIsNewEnough() || !installIfNeeded()) process.exit(2);
const chromium = findChromium();
if (chromium === undefined) process.exit(2);

function run(script, ...words) {
  const env = { ...process.env, HALLFUL_CHROMIUM: chromium };
  return spawnSync(process.execPath, [join(root, "scripts", script), ...words], {
    cwd: root,
    stdio: "inherit",
    env,
  });
}

if (!isBuilt() && run("build.mjs").status !== 0) process.exit(1);
process.exit(run("check.mjs", ...process.argv.slice(2)).status ?? 1);
