import { polygonDistance, type Polygon } from "#kernels/geometry";
import { rectangleOf } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";

/** The least distances between bare mats, in millimetres; null where no two mats stand so. */
export type LeastBetween = {
  /** between long sides that run alongside one another */
  readonly side: number | null;
  /** between short ends that face one another */
  readonly end: number | null;
  /** between any two mats, however they lie */
  readonly any: number | null;
};

/** A hundredth of a degree: mats that were turned together are still alongside. */
const PARALLEL = 0.01;

/**
 * How near the nearest mats lie to one another, measured from the plan itself. Two mats that lie the same way and
 * overlap along their length stand side by side, two that overlap across it stand end to end.
 */
export function leastBetween({ mat }: Pick<Hall, "mat">, mats: readonly PlacedMat[]): LeastBetween {
  const rectangles = mats.map((placed) => rectangleOf(placed, mat));
  const least = { side: Infinity, end: Infinity, any: Infinity };
  const inOrder = [...mats.keys()].sort((a, b) => leftOf(mats[a]) - leftOf(mats[b]));
  for (const [place, index] of inOrder.entries())
    for (const other of inOrder.slice(place + 1)) {
      const [one, two] = [mats[index], mats[other]];
      const [shape, twoShape] = [rectangles[index], rectangles[other]];
      if (one === undefined || two === undefined || shape === undefined || twoShape === undefined) continue;
      // further apart in x alone than two neighbours can be for it to matter
      if (leftOf(two) - leftOf(one) > furthest(mat, least)) break;
      take(least, mat, one, two, shape, twoShape);
    }
  return { side: told(least.side), end: told(least.end), any: told(least.any) };
}

type Least = { side: number; end: number; any: number };

function leftOf(placed: PlacedMat | undefined): number {
  return placed === undefined ? 0 : placed.centre[0];
}

/** Past this centre to centre no pair can be nearer than what was found. */
function furthest({ length, width }: Hall["mat"], least: Least): number {
  return Math.hypot(length, width) + Math.max(least.side, least.end, least.any);
}

function take(
  least: Least,
  { length, width }: Hall["mat"],
  one: PlacedMat,
  two: PlacedMat,
  shape: Polygon,
  other: Polygon,
): void {
  const apart = polygonDistance(shape, other);
  least.any = Math.min(least.any, apart);
  const turned = Math.abs(one.angle - two.angle) % 180;
  if (Math.min(turned, 180 - turned) > PARALLEL) return;
  const radians = (one.angle * Math.PI) / 180;
  const [x, y] = [two.centre[0] - one.centre[0], two.centre[1] - one.centre[1]];
  const along = Math.abs(x * Math.cos(radians) + y * Math.sin(radians));
  const across = Math.abs(y * Math.cos(radians) - x * Math.sin(radians));
  if (along < length - 1) least.side = Math.min(least.side, across - width);
  if (across < width - 1) least.end = Math.min(least.end, along - length);
}

/** Whole millimetres, a fit that is a hair short not a millimetre short. */
function told(millimetres: number): number | null {
  return millimetres === Infinity ? null : Math.max(0, Math.floor(millimetres + 0.01));
}
