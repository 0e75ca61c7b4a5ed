// Everything that must hold, one step after another; all steps run, so one run tells all that is wrong.
// `node scripts/check.mjs lint types` runs just those.
import { spawnSync } from "node:child_process";
import process from "node:process";

const local = (name, ...words) => [`node_modules/.bin/${name}`, ...words];
const node = (...words) => [process.execPath, ...words];

const steps = {
  format: local("biome", "format", "--no-errors-on-unmatched", "."),
  lint: local("oxlint", "--type-aware", "--deny-warnings"),
  types: node("scripts/types.mjs"),
  "dead code": local("knip", "--no-progress"),
  walls: local("vitest", "run", "checks/walls"),
  unit: local("vitest", "run", "kernels", "core", "app", "adapters", "apps", "demo", "testing", "bench"),
  published: local("vitest", "run", "checks/published"),
  documents: local("vitest", "run", "checks/docs"),
  bundle: local("vitest", "run", "checks/bundle"),
  browser: local("vitest", "run", "--config", "checks/browser/vitest.config.ts"),
};

function run(name) {
  const [command, ...words] = steps[name];
  console.log(`\n── ${name}`);
  const started = performance.now();
  const { status } = spawnSync(command, words, {
    stdio: "inherit",
    env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: undefined },
  });
  const seconds = (performance.now() - started) / 1000;
  return { name, seconds, ok: status === 0 };
}

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !(name in steps));
if (unknown.length > 0) {
  console.error(`No such check: ${unknown.join(", ")}. There are: ${Object.keys(steps).join(", ")}.`);
  process.exit(2);
}

const results = (wanted.length > 0 ? wanted : Object.keys(steps)).map(run);
console.log("\n── all checks");
for (const { name, ok, seconds } of results)
  console.log(`${ok ? "pass" : "FAIL"}  ${name} (${seconds.toFixed(1)} s)`);
const failed = results.filter((it) => !it.ok).length;
console.log(`checks: ${results.length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
