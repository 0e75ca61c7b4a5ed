import { floorToFill } from "#core/hall";
import { quarterTurnAngle, wallDirections } from "#kernels/geometry";
import {
  advanceMost,
  areaBound,
  checkPlaced,
  linesPlan,
  type MostRun,
  positionGrid,
  startMost,
} from "#kernels/packing";
import type { Solver } from "#kernels/search";
import type { BenchHall } from "./bench-halls.ts";
import { type Clock, wallClock } from "./clock.ts";

export type MostRecord = {
  readonly hall: string;
  readonly axes: number;
  readonly axesSettled: number;
  readonly lines: number;
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  readonly areaBound: number;
  readonly steps: number;
  readonly faults: number;
  readonly msToFirst: number;
  /** until the last gain in mats, until the last gain in the bound, and until the run ended */
  readonly msToBest: number;
  readonly msToBound: number;
  readonly msInAll: number;
  /** milliseconds of the longest single step: how long a stop may wait */
  readonly msLongestStep: number;
  /** megabytes: the greatest the process has ever held, of all halls so far */
  readonly peakMb: number;
  readonly heapMb: number;
  readonly peer: MostPeer | null;
};

/** The whole position-grid model of the first axis, given to the integer-programme solver; null: too large to pass. */
export type MostPeer = {
  readonly columns: number;
  readonly rows: number;
  readonly entries: number;
  readonly outcome: string;
  /** mats in the solver's best answer, which need not be allowed on floors with slanted walls */
  readonly count: number | null;
  readonly bound: number | null;
  readonly ms: number;
};

/** Entries past which the model is not passed: some 50 MB of numbers. */
const MOST_ENTRIES = 4e6;

export function measureMost(
  { file, hall }: BenchHall,
  solver: Solver,
  seconds: number,
  peerSeconds: number,
  clock: Clock = wallClock,
): MostRecord {
  const floor = floorToFill(hall);
  const axes = hall.axis === "auto" ? wallDirections(floor.outline) : [quarterTurnAngle(hall.axis)];
  const began = clock();
  let run = startMost(floor, hall.mat, hall.gaps, axes, { solver });
  const msToFirst = clock() - began;
  let [msToBest, msToBound, msLongestStep] = [msToFirst, msToFirst, 0];
  let now = msToFirst;
  while (!run.finished && now < seconds * 1000) {
    const next: MostRun = advanceMost(run, 1);
    const before = now;
    now = clock() - began;
    msLongestStep = Math.max(msLongestStep, now - before);
    if (next.plan.count > run.plan.count) msToBest = now;
    if (next.plan.bound < run.plan.bound) msToBound = now;
    run = next;
  }
  const { count, bound, proven, pieces } = run.plan;
  return {
    hall: file,
    axes: run.axes,
    axesSettled: run.axesSettled,
    lines: linesPlan(floor, hall.mat, hall.gaps, axes).count,
    count,
    bound,
    proven,
    areaBound: areaBound(floor, hall.mat, hall.gaps),
    steps: run.steps,
    faults: checkPlaced(floor, hall.mat, hall.gaps, pieces).length,
    msToFirst: rounded(msToFirst),
    msToBest: rounded(msToBest),
    msToBound: rounded(msToBound),
    msInAll: rounded(now),
    msLongestStep: rounded(msLongestStep),
    peakMb: Math.round(process.resourceUsage().maxRSS / 1000),
    heapMb: Math.round(process.memoryUsage().heapUsed / 1e6),
    peer: peerSeconds === 0 ? null : measurePeer(),
  };

  function measurePeer(): MostPeer | null {
    const start = clock();
    const model = positionGrid(floor, hall.mat, hall.gaps, axes[0] ?? 0, MOST_ENTRIES);
    if (model === null) return null;
    const outcome = solver.solve(model, { seconds: peerSeconds });
    return {
      columns: model.columns.length,
      rows: model.rows.length,
      entries: model.rows.reduce((sum, row) => sum + row.columns.length, 0),
      outcome: outcome.kind === "failed" ? outcome.why : outcome.kind,
      count:
        outcome.kind === "best"
          ? outcome.value
          : outcome.kind === "stopped"
            ? (outcome.found?.value ?? null)
            : null,
      bound:
        outcome.kind === "best"
          ? outcome.value
          : outcome.kind === "stopped" && outcome.bound < Infinity
            ? Math.floor(outcome.bound + 1e-6)
            : null,
      ms: rounded(clock() - start),
    };
  }
}

function rounded(ms: number): number {
  return Math.round(ms * 10) / 10;
}
