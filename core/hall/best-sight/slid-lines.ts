import type { Point } from "#kernels/geometry";
import type { Floor } from "#kernels/packing";
import type { LinedMatPlan } from "../arrangement/arrangement-types.ts";
import { sightOptions } from "../arrangement/sight-options.ts";
import { standsAllowed } from "../arrangement/stands-allowed.ts";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { behindWhom } from "../sight/who-cannot-see.ts";
import { added, dot, scaled } from "../vectors.ts";
import { directionOf, rowsOf } from "./rows-of.ts";
import { relaidPlan } from "./thinned-plan.ts";

/** A line is slid by whole steps, as far as a mat and its gap either way; coarser where there are many mats. */
const STEPS = { few: 50, many: 100 } as const;
const MANY = 60;

/** Times that every line is looked at again; two are nearly always enough. */
const ROUNDS = 3;

type Row = readonly PlacedMat[];

/**
 * The same lines, each slid along itself as a whole to where the fewest cannot see: one line after the other, again
 * and again, until nothing gets better. Which mats there are and how far apart stays. Best found, not proven.
 */
export function slidLines<Plan extends LinedMatPlan>(hall: Hall, plan: Plan): Plan {
  const options = sightOptions(plan);
  const rows: Row[] = [...rowsOf(plan)];
  const floor = floorOf(hall, plan);
  const hiddenIn = (tried: readonly Row[]): number => behindWhom(hall, tried.flat(), options)?.length ?? 0;
  const start = hiddenIn(rows);
  let hidden = start;
  for (let round = 0; round < ROUNDS && hidden > 0; round++) {
    const before = hidden;
    for (const [index, row] of rows.entries())
      for (const slid of slidRows(hall, floor, rows, row)) {
        const fewer = hiddenIn(rows.with(index, slid));
        if (fewer >= hidden) continue;
        [rows[index], hidden] = [slid, fewer];
      }
    if (hidden === before) break;
  }
  return hidden === start ? plan : relaidPlan(hall, plan, rows);
}

/** What the mats keep clear of, the middle of two banks included. */
function floorOf(hall: Hall, plan: LinedMatPlan): Floor {
  const floor = floorToFill(hall);
  if (plan.arrangement !== "facing" || plan.middle === null) return floor;
  return { ...floor, keepClear: [...floor.keepClear, plan.middle.outline] };
}

/** The line where it may be slid to, the nearest first. */
function slidRows(hall: Hall, floor: Floor, rows: readonly Row[], row: Row): readonly Row[] {
  const way = wayOf(rows);
  const beside = rows.filter((other) => other !== row && isBeside(hall, way, row, other)).flat();
  const step = rows.flat().length > MANY ? STEPS.many : STEPS.few;
  const count = Math.floor((hall.mat.length + hall.gaps.end) / step);
  const shifts = Array.from({ length: count }, (_, on) => (on + 1) * step).flatMap((by) => [by, -by]);
  return shifts
    .map((by) => row.map((mat) => ({ ...mat, centre: added(mat.centre, scaled(way, by)) })))
    .filter((slid) => endsFirst(slid).every((mat) => standsAllowed(hall, floor, mat, beside)));
}

/** One long, the way the lines run. */
function wayOf(rows: readonly Row[]): Point {
  const radians = (directionOf(rows) * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** Lines one before the other keep apart wherever along themselves they lie; those of two wings may be one line. */
function isBeside({ mat, gaps }: Hall, way: Point, [one]: Row, [other]: Row): boolean {
  if (one === undefined || other === undefined) return false;
  const square: Point = [0 - way[1], way[0]];
  const apart = Math.abs(dot(one.centre, square) - dot(other.centre, square));
  return apart < Math.max(mat.length + gaps.end, mat.width + gaps.side) - 1;
}

/** A shift mostly fails at an end, so those are looked at first. */
function endsFirst(row: Row): Row {
  return [...row.slice(0, 1), ...row.slice(-1), ...row.slice(1, -1)];
}
