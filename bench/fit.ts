// How fast and how good mat plans are, hall by hall, beside a plain scan of every millimetre.
// Takes a minute or two for the scan; --peer-step 0 leaves it out.
// npm run bench -- fit [--json] [--runs 15] [--peer-step 1, or 0 for none] [--hall NAME]
import { parseArgs } from "node:util";
import { benchHalls } from "./bench-halls.ts";
import { fitInWords } from "./fit-in-words.ts";
import { measureFit } from "./fit-measure.ts";
import { summariseFits } from "./fit-summary.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    runs: { type: "string", default: "15" },
    "peer-step": { type: "string", default: "1" },
    hall: { type: "string" },
  },
});

const chosen = benchHalls().filter(({ file }) => values.hall === undefined || file === values.hall);
const fits = chosen.map((hall, index) => {
  console.error(`${index + 1} of ${chosen.length}: ${hall.file}`);
  return measureFit(hall, Number(values.runs), Number(values["peer-step"]));
});
const record = { bench: "fit", node: process.version, halls: fits, summary: summariseFits(fits) };
console.log(values.json ? JSON.stringify(record, null, 2) : fitInWords(fits, record.summary));
