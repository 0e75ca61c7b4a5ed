// How fast and how good mat plans are, hall by hall, beside a plain scan of every millimetre.
// Takes a minute or two for the scan; --peer-step 0 leaves it out. Then how long a drag takes in Chromium.
// Between them every arrangement: count, bound, proof, times and memory, most beside the whole model for as long.
// npm run bench -- fit [--json] [--runs 15] [--peer-step 1, or 0 for none] [--moves 60, or 0 for no drags] [--hall NAME | --halls NAME,NAME]
// [--seconds 5 for most and as long for the whole model, or 0 for no arrangements] [--clock own, as in bench -- most]
import { parseArgs } from "node:util";
import { loadSolver } from "#kernels/search";
import { arrangementsInWords } from "./arrangement-in-words.ts";
import { measureArrangements } from "./arrangement-measure.ts";
import { benchHalls } from "./bench-halls.ts";
import { ownClock, wallClock } from "./clock.ts";
import { dragInWords } from "./drag-in-words.ts";
import { runDrags } from "./drag-record.ts";
import { fitInWords } from "./fit-in-words.ts";
import { measureFit } from "./fit-measure.ts";
import { summariseFits } from "./fit-summary.ts";
import { machineNow } from "./machine.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    runs: { type: "string", default: "15" },
    "peer-step": { type: "string", default: "1" },
    moves: { type: "string", default: "60" },
    hall: { type: "string" },
    halls: { type: "string" },
    seconds: { type: "string", default: "5" },
    clock: { type: "string", default: "wall" },
  },
});

const wanted = values.halls?.split(",") ?? (values.hall === undefined ? null : [values.hall]);
const chosen = benchHalls().filter(({ file }) => wanted === null || wanted.includes(file));
const seconds = Number(values.seconds);
const solver = await loadSolver();
const fits = chosen.map((hall, index) => {
  console.error(`${index + 1} of ${chosen.length}: ${hall.file}`);
  return measureFit(hall, Number(values.runs), Number(values["peer-step"]));
});
const fit = { bench: "fit", machine: machineNow(), halls: fits, summary: summariseFits(fits) };
const arrangements = (seconds > 0 ? chosen : []).map((hall, index) => {
  console.error(`every arrangement, ${index + 1} of ${chosen.length}: ${hall.file}`);
  const clock = values.clock === "own" ? ownClock : wallClock;
  return { hall: hall.file, arrangements: measureArrangements(hall, solver, seconds, clock) };
});
const moves = Number(values.moves);
const drag = moves > 0 ? await runDrags(moves, values.hall) : null;
const inWords = () =>
  [
    fitInWords(fits, fit.summary),
    ...(seconds > 0 ? [arrangementsInWords(arrangements)] : []),
    ...(drag === null ? [] : [dragInWords(drag)]),
  ].join("\n\n");
console.log(
  values.json
    ? JSON.stringify({ ...fit, seconds, clock: values.clock, arrangements, drag }, null, 2)
    : inWords(),
);
