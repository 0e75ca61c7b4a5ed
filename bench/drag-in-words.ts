import type { DragRecord } from "./drag-measure.ts";
import type { DragRun } from "./drag-record.ts";
import { AIM_MS } from "./drag-summary.ts";

export function dragInWords({ browser, machine, halls, summary }: DragRun): string {
  return [
    "hall                      drawn        median         worst     in worker",
    ...halls.map(lineOf),
    "",
    `From pointer to drawn mats in Chromium ${browser}: ${summary.medianMs} ms in the middle, ` +
      `${summary.worstMs} ms at worst (${summary.worstHall}).`,
    `${(summary.withinAim * 100).toFixed(1)} % of ${summary.moves} moves were drawn in under ${AIM_MS} ms.`,
    `The machine has ${machine.cores} cores and had a load of ${machine.load}.`,
  ].join("\n");
}

function lineOf({ hall, moves, drawn, medianMs, worstMs, workerMedianMs }: DragRecord): string {
  return [
    hall.padEnd(22),
    `${drawn}/${moves}`.padStart(9),
    `${medianMs} ms`.padStart(14),
    `${worstMs} ms`.padStart(14),
    `${workerMedianMs} ms`.padStart(14),
  ].join("");
}
