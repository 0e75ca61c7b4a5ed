import { edgesOf, type Point, pointToSegment, type Polygon } from "#kernels/geometry";
import { wallName } from "./corner-names.ts";
import type { FloorDraft } from "./floor-draft.ts";
import { outwardOf } from "./floor-walls.ts";
import { dot } from "./vectors.ts";

/** Which way people face: one long, out through the front wall, and to their right. */
export type HallFrame = { readonly front: Point; readonly right: Point };

/** 2e-4 is 2 mm over a line of 10 m: walls that were turned and rounded to the millimetre are still square. */
export const SQUARE = 2e-4;

/**
 * The front is the wall nearest the middle of the teacher's zone; without a zone the wall that is most at the top
 * of the drawing. Where two are equal it is the first.
 */
export function hallFrame(floor: Pick<FloorDraft, "outline" | "teacher">): HallFrame {
  const { outline, teacher } = floor;
  const ranks = teacher === null ? upwardRanks(outline) : nearnessRanks(outline, middleOf(teacher.outline));
  const wall = ranks.indexOf(Math.max(...ranks));
  const front = outwardOf(outline, wall);
  return { front, right: [front[1], 0 - front[0]] };
}

/** Walls as little as 1e-9 apart are equally high, so that the turn of a floor does not decide. */
function upwardRanks(outline: Polygon): readonly number[] {
  return outline.map((_, wall) => Math.round(outwardOf(outline, wall)[1] * 1e9));
}

function nearnessRanks(outline: Polygon, middle: Point): readonly number[] {
  return edgesOf(outline).map(([from, to]) => -Math.round(pointToSegment(middle, from, to)));
}

/** The mean of the corners; good enough to say on which side a zone lies. */
export function middleOf(outline: Polygon): Point {
  const [x, y] = outline.reduce<Point>((sum, corner) => [sum[0] + corner[0], sum[1] + corner[1]], [0, 0]);
  return [x / outline.length, y / outline.length];
}

/** "the front wall" for the outermost wall on a side as seen facing the front, else "the wall C–D". */
export function wallInWords(outline: Polygon, frame: HallFrame, wall: number): string {
  const outward = outwardOf(outline, wall);
  const corner = outline[wall] ?? [0, 0];
  const side = sidesOf(frame).find(({ way }) => {
    const outermost = Math.max(...outline.map((it) => dot(it, way)));
    return 1 - dot(outward, way) < SQUARE && outermost - dot(corner, way) < 1;
  });
  return side === undefined ? `the wall ${wallName(outline, wall)}` : `the ${side.name} wall`;
}

export function sidesOf({ front, right }: HallFrame) {
  return [
    { name: "front", way: front },
    { name: "back", way: [-front[0], -front[1]] },
    { name: "left", way: [-right[0], -right[1]] },
    { name: "right", way: right },
  ] as const;
}
