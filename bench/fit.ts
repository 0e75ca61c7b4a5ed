// How fast and how good mat plans are, hall by hall, beside a plain scan of every millimetre.
// Takes a minute or two for the scan; --peer-step 0 leaves it out. Then how long a drag takes in Chromium.
// npm run bench -- fit [--json] [--runs 15] [--peer-step 1, or 0 for none] [--moves 60, or 0 for no drags] [--hall NAME]
import { parseArgs } from "node:util";
import { benchHalls } from "./bench-halls.ts";
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
  },
});

const chosen = benchHalls().filter(({ file }) => values.hall === undefined || file === values.hall);
const fits = chosen.map((hall, index) => {
  console.error(`${index + 1} of ${chosen.length}: ${hall.file}`);
  return measureFit(hall, Number(values.runs), Number(values["peer-step"]));
});
const fit = { bench: "fit", machine: machineNow(), halls: fits, summary: summariseFits(fits) };
const moves = Number(values.moves);
const drag = moves > 0 ? await runDrags(moves, values.hall) : null;
const inWords = () =>
  [fitInWords(fits, fit.summary), ...(drag === null ? [] : [dragInWords(drag)])].join("\n\n");
console.log(values.json ? JSON.stringify({ ...fit, drag }, null, 2) : inWords());
