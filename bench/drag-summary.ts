import type { DragRecord } from "./drag-measure.ts";

/** A drag is to be redrawn in under 50 ms: three frames of a screen of 60 a second. */
export const AIM_MS = 50;

export type DragSummary = {
  readonly halls: number;
  readonly moves: number;
  /** over every move of every hall */
  readonly medianMs: number;
  readonly worstMs: number;
  readonly worstHall: string;
  /** share of the moves drawn within the aim, to a thousandth */
  readonly withinAim: number;
};

export function summariseDrags(drags: readonly DragRecord[]): DragSummary {
  const times = drags.flatMap((it) => it.times).sort((a, b) => a - b);
  const worst = drags.reduce<DragRecord | undefined>(
    (most, it) => (most === undefined || it.worstMs > most.worstMs ? it : most),
    undefined,
  );
  return {
    halls: drags.length,
    moves: times.length,
    medianMs: times[Math.floor(times.length / 2)] ?? 0,
    worstMs: times.at(-1) ?? 0,
    worstHall: worst?.hall ?? "",
    withinAim:
      Math.round((times.filter((it) => it < AIM_MS).length / Math.max(times.length, 1)) * 1000) / 1000,
  };
}
