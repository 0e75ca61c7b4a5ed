import { floorToFill } from "#core/hall";
import { areaBound, checkPlaced, linesByScanning, linesPlan, type LinesPlan } from "#kernels/packing";
import type { BenchHall } from "./bench-halls.ts";

export type FitRecord = {
  readonly hall: string;
  readonly corners: number;
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  readonly areaBound: number;
  readonly axis: number;
  readonly direction: number;
  readonly along: string;
  readonly grid: number;
  readonly steps: number;
  readonly faults: number;
  readonly firstMs: number;
  readonly medianMs: number;
  readonly worstMs: number;
  /** the witness: every whole `step` millimetres, on the winning axis only */
  readonly peer: { readonly count: number; readonly step: number; readonly ms: number } | null;
};

/** Times the plan of one hall `runs` times after a first one, and the witness once unless its step is 0. */
export function measureFit({ file, hall }: BenchHall, runs: number, peerStep: number): FitRecord {
  const floor = floorToFill(hall);
  const axes = hall.axis === "auto" ? hall.axis : [hall.axis];
  const first = timed(() => linesPlan(floor, hall.mat, hall.gaps, axes));
  const plan = first.value;
  const times = Array.from(
    { length: runs },
    () => timed(() => linesPlan(floor, hall.mat, hall.gaps, axes)).ms,
  );
  const sorted = times.sort((a, b) => a - b);
  const shapes = [floor.outline, ...floor.fixtures, ...floor.keepClear];
  const corners = shapes.reduce((sum, each) => sum + each.length, 0);
  const placed = plan.lines.flatMap((line) => line.pieces);
  return {
    hall: file,
    corners,
    ...summaryOf(plan),
    areaBound: areaBound(floor, hall.mat, hall.gaps),
    faults: checkPlaced(floor, hall.mat, hall.gaps, placed).length,
    firstMs: rounded(first.ms),
    medianMs: rounded(sorted[runs >> 1] ?? first.ms),
    worstMs: rounded(sorted.at(-1) ?? first.ms),
    peer: peerStep === 0 ? null : measurePeer(),
  };

  function measurePeer(): FitRecord["peer"] {
    const step = peerStep * coarserBy(corners);
    const { value, ms } = timed(() => linesByScanning(floor, hall.mat, hall.gaps, [plan.axis], step));
    return { count: value, step, ms: rounded(ms) };
  }
}

/**
 * Every millimetre takes the witness seconds on a plain hall and minutes on one of many corners: it then steps
 * coarser, and the record says so.
 */
function coarserBy(corners: number): number {
  if (corners <= 8) return 1;
  return corners <= 24 ? 10 : 50;
}

function summaryOf({ count, bound, proven, axis, direction, along, grid, steps }: LinesPlan) {
  return { count, bound, proven, axis, direction, along, grid, steps };
}

function timed<T>(work: () => T): { readonly value: T; readonly ms: number } {
  const before = performance.now();
  const value = work();
  return { value, ms: performance.now() - before };
}

function rounded(ms: number): number {
  return Math.round(ms * 1000) / 1000;
}
