import type { DragRecord } from "./drag-measure.ts";
import { AIM_MS, type DragSummary } from "./drag-summary.ts";

type Record = {
  readonly browser: string;
  readonly machine: { readonly cores: number; readonly load: number };
  readonly halls: readonly DragRecord[];
  readonly summary: DragSummary;
};

export function dragInWords({ browser, machine, halls, summary }: Record): string {
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
