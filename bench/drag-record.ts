import { benchHallDocuments } from "./drag-halls.ts";
import { type DragRecord, measureDrags } from "./drag-measure.ts";
import { openDragPage } from "./drag-page.ts";
import { type DragSummary, summariseDrags } from "./drag-summary.ts";
import { type Machine, machineNow } from "./machine.ts";

export type DragRun = {
  readonly bench: "drag";
  readonly browser: string;
  readonly machine: Machine;
  readonly halls: readonly DragRecord[];
  readonly summary: DragSummary;
};

/** Drags a wall in each bench hall, or in the one named, in a real Chromium. */
export async function runDrags(moves: number, only: string | undefined): Promise<DragRun> {
  const halls = benchHallDocuments().filter(({ file }) => only === undefined || file === only);
  const page = await openDragPage();
  try {
    const drags = await measureDrags(page, halls, moves);
    const { version: browser } = page;
    return { bench: "drag", browser, machine: machineNow(), halls: drags, summary: summariseDrags(drags) };
  } finally {
    await page.close();
  }
}
