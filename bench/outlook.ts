// A year's band, learning from a register, how often the bands hold, and what advice is worth beside rules of thumb.
// npm run bench -- outlook [--json] [--classes 40, for the last two; 120 in docs/keep-or-close.md] [--seed 1]
import { parseArgs } from "node:util";
import { machineNow } from "./machine.ts";
import { measureCoverage } from "./outlook-coverage.ts";
import { outlookInWords } from "./outlook-in-words.ts";
import { measureRegret, worlds } from "./outlook-regret.ts";
import { measureLearning, measureYear } from "./outlook-speed.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    classes: { type: "string", default: "40" },
    seed: { type: "string", default: "1" },
  },
});

const classes = Number(values.classes);
const seed = Number(values.seed);
const told = (what: string): void => console.error(what);

told("a year’s band");
const year = measureYear();
told("learning from forty sessions");
const learning = measureLearning();
told(`bands on ${classes} simulated classes`);
const coverage = [
  { recorded: 12, counted: false, opening: 0 },
  { recorded: 12, counted: true, opening: 0 },
  { recorded: 40, counted: false, opening: 0 },
  { recorded: 40, counted: true, opening: 0 },
  { recorded: 12, counted: false, opening: 8 },
  { recorded: 12, counted: true, opening: 8 },
  { recorded: 12, counted: false, opening: 0, luck: 0 },
  { recorded: 12, counted: false, opening: 0, luck: 0.3 },
  { recorded: 12, counted: false, opening: 0, luck: 0.3, reckoned: false },
  { recorded: 40, counted: false, opening: 0, luck: 0.3 },
  { recorded: 40, counted: false, opening: 0, luck: 0.3, reckoned: false },
].map((asked) => measureCoverage(classes, { luck: null, reckoned: true, ...asked }, seed));
const regret = worlds.map((world) => {
  told(`advice on ${classes} simulated classes, ${world.name}`);
  return { world: world.name, rules: measureRegret(classes, seed, world) };
});

const record = { bench: "outlook", machine: machineNow(), classes, seed, year, learning, coverage, regret };
console.log(values.json ? JSON.stringify(record, null, 2) : outlookInWords(record));
