// Example: rows of mats that run from left to right and are set out from the front wall run [1, 0] and step [0, −1].
// Invariant: run goes from the first mat of a line to its last, step from the first line towards the later ones.
import { type FloorDraft, hallFrame, type PlacedMat, type SetOutLine } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { direction } from "./mat-corners.ts";

/** One line of mats with its figures. */
export type FiguredLine = {
  readonly mats: readonly [PlacedMat, ...PlacedMat[]];
  readonly figures: SetOutLine;
};

export type LineDirections = { readonly run: Point; readonly step: Point };

/** How the lines of a plan run and follow one another, both one long; `anchor` is a line with the most mats. */
export function lineDirections(
  lines: readonly FiguredLine[],
  anchor: FiguredLine,
  floor: Pick<FloorDraft, "outline" | "teacher">,
): LineDirections {
  const { front, right } = hallFrame(floor);
  // lines are laid from the front or from the left, and each line the same: away from both
  const away: Point = [right[0] - front[0], right[1] - front[1]];
  const [first] = anchor.mats;
  const last = anchor.mats.at(-1) ?? first;
  const run =
    last === first
      ? pointing(loneRun(lines, anchor), away)
      : unit([last.centre[0] - first.centre[0], last.centre[1] - first.centre[1]]);
  return { run, step: stepOf(lines, anchor, run, away) };
}

/** Where every line has one mat: lines lie as far apart as their figures say square to the run. */
function loneRun(lines: readonly FiguredLine[], anchor: FiguredLine): Point {
  const along = direction(anchor.mats[0].angle);
  const across = direction(anchor.mats[0].angle + 90);
  const other = otherLine(lines, anchor);
  if (other === undefined) return across;
  const apart = Math.abs(other.figures.from - anchor.figures.from);
  const misses = (way: Point) => Math.abs(Math.abs(between(anchor, other, way)) - apart);
  return misses(along) < misses(across) ? across : along;
}

function stepOf(lines: readonly FiguredLine[], anchor: FiguredLine, run: Point, away: Point): Point {
  const square: Point = [0 - run[1], run[0]];
  const other = otherLine(lines, anchor);
  if (other === undefined) return pointing(square, away);
  const later = Math.sign(other.figures.from - anchor.figures.from);
  return between(anchor, other, square) * later >= 0 ? square : [0 - square[0], 0 - square[1]];
}

/** The line that lies farthest from the anchor; undefined where all are at one distance. */
function otherLine(lines: readonly FiguredLine[], anchor: FiguredLine): FiguredLine | undefined {
  const apart = (line: FiguredLine) => Math.abs(line.figures.from - anchor.figures.from);
  const farthest = lines.toSorted((a, b) => apart(b) - apart(a))[0];
  return farthest === undefined || apart(farthest) < 1 ? undefined : farthest;
}

function between(one: FiguredLine, other: FiguredLine, way: Point): number {
  const [a, b] = [one.mats[0].centre, other.mats[0].centre];
  return dot([b[0] - a[0], b[1] - a[1]], way);
}

function pointing(way: Point, towards: Point): Point {
  return dot(way, towards) < 0 ? [0 - way[0], 0 - way[1]] : way;
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

function unit([x, y]: Point): Point {
  const length = Math.hypot(x, y);
  return length === 0 ? [1, 0] : [x / length, y / length];
}
