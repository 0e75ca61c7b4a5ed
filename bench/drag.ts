// How long it takes in Chromium from a move of the pointer to the frame that shows the mats of the new floor.
// npm run bench -- drag [--json] [--moves 60] [--hall NAME]; HALLFUL_CHROMIUM names the browser if it is not on the path.
import { cpus, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { benchHallDocuments } from "./drag-halls.ts";
import { dragInWords } from "./drag-in-words.ts";
import { measureDrags } from "./drag-measure.ts";
import { openDragPage } from "./drag-page.ts";
import { summariseDrags } from "./drag-summary.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    moves: { type: "string", default: "60" },
    hall: { type: "string" },
  },
});

const halls = benchHallDocuments().filter(({ file }) => values.hall === undefined || file === values.hall);
const page = await openDragPage();
try {
  const drags = await measureDrags(page, halls, Number(values.moves));
  // the browser needs a core for the page and one for the worker: with a load above the cores, times are not its own
  const machine = { cores: cpus().length, load: Math.round((loadavg()[0] ?? 0) * 10) / 10 };
  const record = {
    bench: "drag",
    browser: page.version,
    machine,
    halls: drags,
    summary: summariseDrags(drags),
  };
  console.log(values.json ? JSON.stringify(record, null, 2) : dragInWords(record));
} finally {
  await page.close();
}
