import { wallDirections } from "#kernels/geometry";
import { areaBound } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";

/** The axes to plan along, as the packing kernel takes them, and how many wall directions that leaves out. */
export type AxesToTry = {
  readonly axes: readonly number[] | "auto";
  /** wall directions of the floor; 1 where the hall states its axis */
  readonly directions: number;
  readonly leftOut: number;
};

/**
 * A floor drawn from a curve has a direction a wall, and a plan along each takes up to half a second: with more walls
 * than this fewer directions are tried. Of forty halls none that is built of straight walls has more than nine.
 */
const MANY_WALLS = 100;
const MOST_DIRECTIONS = { few: 12, many: 6 } as const;

/** The axis that the hall states, else every wall direction; of very many those with the most wall. */
export function axesToTry({ axis, outline }: Pick<Hall, "axis" | "outline">): AxesToTry {
  if (axis !== "auto") return { axes: [axis], directions: 1, leftOut: 0 };
  const all = wallDirections(outline);
  const most = outline.length > MANY_WALLS ? MOST_DIRECTIONS.many : MOST_DIRECTIONS.few;
  if (all.length <= most) return { axes: axis, directions: all.length, leftOut: 0 };
  return { axes: all.slice(0, most), directions: all.length, leftOut: all.length - most };
}

type Counted = { readonly count: number; readonly bound: number; readonly proven: boolean };

/** What is proven along some directions says nothing of the others: where there are any only the area bounds those. */
export function boundOverAll(hall: Hall, { leftOut }: AxesToTry, { count, bound }: Counted): Counted {
  const over = leftOut === 0 ? bound : Math.max(count, areaBound(floorToFill(hall), hall.mat, hall.gaps));
  return { count, bound: over, proven: over === count };
}

/** "along the walls", "along each of 3 wall directions", "along the 6 of 125 wall directions with most wall". */
export function directionsInWords(hall: Pick<Hall, "axis" | "outline">): string {
  const { directions, leftOut } = axesToTry(hall);
  if (hall.axis !== "auto") return `at ${hall.axis}° of the drawing`;
  if (directions === 1) return "along the walls";
  if (leftOut === 0) return `along each of ${directions} wall directions`;
  return `along the ${directions - leftOut} of ${directions} wall directions with most wall`;
}
