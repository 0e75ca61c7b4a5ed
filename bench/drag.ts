// How long it takes in Chromium from a move of the pointer to the frame that shows the mats of the new floor.
// npm run bench -- drag [--json] [--moves 60] [--hall NAME]; HALLFUL_CHROMIUM names the browser if it is not on the path.
import { parseArgs } from "node:util";
import { dragInWords } from "./drag-in-words.ts";
import { runDrags } from "./drag-record.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    moves: { type: "string", default: "60" },
    hall: { type: "string" },
  },
});

const run = await runDrags(Number(values.moves), values.hall);
console.log(values.json ? JSON.stringify(run, null, 2) : dragInWords(run));
