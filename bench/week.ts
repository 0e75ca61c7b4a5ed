// The best week of sixty candidates in eight places to proof, and both trade-off curves, beside every integer-programme
// solver of the system's packages that is installed (highs, cbc, glpsol), given the same model as a file in the same run.
// npm run bench -- week [--json] [--candidates 60] [--places 8] [--weeks 10] [--peer-seconds 60]
// [--clock own: counts the time of the process, for machines that others use; peers keep the wall's]
import { parseArgs } from "node:util";
import { loadSolver } from "#kernels/search";
import { ownClock, wallClock } from "./clock.ts";
import { commandLineSolvers } from "./command-line-solver.ts";
import { machineNow } from "./machine.ts";
import { weekInWords } from "./week-in-words.ts";
import { measureWeek } from "./week-measure.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    candidates: { type: "string", default: "60" },
    places: { type: "string", default: "8" },
    weeks: { type: "string", default: "10" },
    "peer-seconds": { type: "string", default: "60" },
    clock: { type: "string", default: "wall" },
  },
});

const solver = await loadSolver();
const peers = commandLineSolvers();
const bench = {
  candidates: Number(values.candidates),
  places: Number(values.places),
  peers,
  peerSeconds: Number(values["peer-seconds"]),
};
const clock = values.clock === "own" ? ownClock : wallClock;
const weeks = Array.from({ length: Number(values.weeks) }, (_, at) => {
  console.error(`week ${at + 1} of ${values.weeks}`);
  // every other one crowded into the evenings, where choices get in each other's way
  return measureWeek(bench, { seed: 101 + at, crowded: at % 2 === 1 }, solver, clock);
});
const peersTold =
  peers.length === 0
    ? "No command-line solver is installed (looked for highs, cbc, glpsol), so there is no peer in this run."
    : `Peers: ${peers.map(({ name, version }) => `${name} ${version}`).join(", ")}.`;
const record = { bench: "week", machine: machineNow(), clock: values.clock, peers, peersTold, weeks };
console.log(values.json ? JSON.stringify(record, null, 2) : weekInWords(weeks, peersTold));
