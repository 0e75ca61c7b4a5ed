import { floorToFill } from "#core/hall";
import { boundsOf, quarterTurnAngle } from "#kernels/geometry";
import { checkPlaced, facingPlan, linesPlan, type Placed, roundPlan, staggeredPlan } from "#kernels/packing";
import type { Solver } from "#kernels/search";
import type { BenchHall } from "./bench-halls.ts";
import type { Clock } from "./clock.ts";
import { measureMost, type MostPeer } from "./most-measure.ts";

/** One way of laying mats in one hall. */
export type ArrangementRecord = {
  readonly arrangement: "lines" | "staggered" | "facing" | "round" | "most";
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  readonly faults: number;
  /** milliseconds; null where the proof was not reached in the time allowed */
  readonly msToBest: number;
  readonly msToProof: number | null;
  /** megabytes: the greatest the process has ever held, of all that was measured so far */
  readonly peakMb: number;
  /** for most: the whole position-grid model given to the solver for as long */
  readonly peer: MostPeer | null;
};

/** Millimetres: the clear middle of facing banks, and the least distance of rings from the centre of the floor's box. */
const MIDDLE = 1500;
const LEAST_RADIUS = 1000;

export function measureArrangements(
  benchHall: BenchHall,
  solver: Solver,
  seconds: number,
  clock: Clock,
): readonly ArrangementRecord[] {
  const { hall } = benchHall;
  const floor = floorToFill(hall);
  const axes = hall.axis === "auto" ? hall.axis : [quarterTurnAngle(hall.axis)];
  const { left, right, bottom, top } = boundsOf(floor.outline);
  const centre = [(left + right) / 2, (bottom + top) / 2] as const;
  return [
    one("lines", () => {
      const plan = linesPlan(floor, hall.mat, hall.gaps, axes);
      return { ...plan, placed: plan.lines.flatMap((line) => line.pieces) };
    }),
    one("staggered", () => flat(staggeredPlan(floor, hall.mat, hall.gaps, axes))),
    one("facing", () => flat(facingPlan(floor, hall.mat, hall.gaps, axes, MIDDLE))),
    one("round", () => flat(roundPlan(floor, hall.mat, hall.gaps, centre, LEAST_RADIUS))),
    most(),
  ];

  function one(arrangement: ArrangementRecord["arrangement"], plan: () => Measured): ArrangementRecord {
    const began = clock();
    const { count, bound, proven, placed } = plan();
    const ms = Math.round((clock() - began) * 10) / 10;
    return {
      arrangement,
      count,
      bound,
      proven,
      faults: checkPlaced(floor, hall.mat, hall.gaps, placed).length,
      msToBest: ms,
      msToProof: proven ? ms : null,
      peakMb: peakMb(),
      peer: null,
    };
  }

  function most(): ArrangementRecord {
    const record = measureMost(benchHall, solver, seconds, seconds, clock);
    const { count, bound, proven, faults, msToBest, msInAll, peer } = record;
    const msToProof = proven ? msInAll : null;
    return { arrangement: "most", count, bound, proven, faults, msToBest, msToProof, peakMb: peakMb(), peer };
  }
}

type Measured = Pick<ArrangementRecord, "count" | "bound" | "proven"> & {
  readonly placed: readonly Placed[];
};

function flat(plan: Omit<Measured, "placed"> & { readonly lines: readonly (readonly Placed[])[] }): Measured {
  return { ...plan, placed: plan.lines.flat() };
}

function peakMb(): number {
  return Math.round(process.resourceUsage().maxRSS / 1000);
}
