import { type Point, rotateAboutOrigin } from "#kernels/geometry";
import type { Line } from "#kernels/packing";
import type { Hall } from "./hall.ts";
import type { HallFrame } from "./hall-frame.ts";
import { nearestEdge } from "./mat-extents.ts";
import type { PlacedMat } from "./mat-plan-types.ts";
import { wallAlongLines } from "./tape-walls.ts";
import { dot, scaled } from "./vectors.ts";

/** The lines as a person lays them: away from where lines are measured, and each along from its first mat. */
export type LaidLines = {
  /** one long, square to the lines, away from the side they are measured from */
  readonly away: Point;
  /** one long, along the lines, from the first mat to the last */
  readonly along: Point;
  readonly lines: readonly (readonly PlacedMat[])[];
};

/** One line of a plan, in any order. */
type PackedLine = Pick<Line, "pieces">;

/**
 * Rows that run across the hall are laid from the front, each from the left; files that run front to back are laid
 * from the left, each from the front. Where only a wall on the other side runs along the lines, they are laid from
 * there.
 */
export function layLines(
  { outline, mat }: Pick<Hall, "outline" | "mat">,
  lines: readonly PackedLine[],
  degrees: number,
  frame: HallFrame,
): LaidLines {
  const run = rotateAboutOrigin([1, 0], degrees);
  const square: Point = [0 - run[1], run[0]];
  const rows = Math.abs(dot(square, frame.front)) >= Math.abs(dot(run, frame.front)) - 1e-9;
  const back = scaled(frame.front, -1);
  const along = pointing(run, rows ? frame.right : back);
  const wished = pointing(square, rows ? back : frame.right);
  const mats = lines.flatMap((line) => line.pieces);
  const startsAtAWall = (way: Point): boolean =>
    wallAlongLines(outline, way, along, nearestEdge(mat, mats, way, along)) !== undefined;
  const away = !startsAtAWall(wished) && startsAtAWall(opposite(wished)) ? opposite(wished) : wished;
  return { away, along, lines: inOrder(lines, away, along) };
}

function pointing(way: Point, towards: Point): Point {
  return dot(way, towards) < 0 ? opposite(way) : way;
}

function opposite([x, y]: Point): Point {
  return [0 - x, 0 - y];
}

/** By distance from where they are measured, to the thousandth of a millimetre, then by their first mat. */
function inOrder(lines: readonly PackedLine[], away: Point, along: Point): readonly (readonly PlacedMat[])[] {
  return lines
    .filter((line) => line.pieces.length > 0)
    .map((line) => line.pieces.toSorted((a, b) => place(a, along) - place(b, along)))
    .sort((a, b) => place(a[0], away) - place(b[0], away) || place(a[0], along) - place(b[0], along));
}

function place(mat: PlacedMat | undefined, way: Point): number {
  return mat === undefined ? 0 : Math.round(dot(mat.centre, way) * 1000);
}
