// The most mats hall by hall, how soon and how surely, beside the same model given whole to the solver.
// npm run bench -- most [--json] [--seconds 10] [--peer-seconds 10, or 0 for none] [--hall NAME | --halls NAME,NAME]
// [--clock own: counts the time of the process, for machines that others use]
import { parseArgs } from "node:util";
import { loadSolver } from "#kernels/search";
import { benchHalls } from "./bench-halls.ts";
import { ownClock, wallClock } from "./clock.ts";
import { machineNow } from "./machine.ts";
import { mostInWords } from "./most-in-words.ts";
import { measureMost } from "./most-measure.ts";
import { summariseMost } from "./most-summary.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    seconds: { type: "string", default: "10" },
    "peer-seconds": { type: "string", default: "10" },
    hall: { type: "string" },
    halls: { type: "string" },
    clock: { type: "string", default: "wall" },
  },
});

const solver = await loadSolver();
const wanted = values.halls?.split(",") ?? (values.hall === undefined ? null : [values.hall]);
const chosen = benchHalls().filter(({ file }) => wanted === null || wanted.includes(file));
const clock = values.clock === "own" ? ownClock : wallClock;
const records = chosen.map((hall, index) => {
  console.error(`${index + 1} of ${chosen.length}: ${hall.file}`);
  return measureMost(hall, solver, Number(values.seconds), Number(values["peer-seconds"]), clock);
});
const record = {
  bench: "most",
  machine: machineNow(),
  clock: values.clock,
  seconds: Number(values.seconds),
  peerSeconds: Number(values["peer-seconds"]),
  halls: records,
  summary: summariseMost(records),
};
console.log(values.json ? JSON.stringify(record, null, 2) : mostInWords(records, record.summary));
