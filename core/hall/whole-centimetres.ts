import { checkPlaced, type Floor } from "#kernels/packing";
import type { Point } from "#kernels/geometry";
import type { Hall } from "./hall.ts";
import type { LaidLines } from "./lay-lines.ts";
import { lineReference, measureLine } from "./line-measure.ts";
import type { PlacedMat } from "./mat-plan-types.ts";
import { added, scaled } from "./vectors.ts";

/** A thousandth of a millimetre: what turns and sums leave. */
const HAIR = 1e-3;

/**
 * The same lines, each shifted by less than a centimetre so that its two figures for the tape are whole
 * centimetres, where that is allowed; a line that cannot be shifted keeps its exact place. Upright halls measured
 * in centimetres come as they are.
 *
 * "quickly" looks only at both ends of each line, where a shift mostly fails, and is right on nearly every floor;
 * "carefully" at each line and the one before it; "backwards" the same, but each line goes back to the centimetre
 * before where it may, which suits lines that are packed against the far side. The whole is for the caller to check:
 * the lines of two wings that lie side by side are not held against one another here.
 */
export function wholeCentimetres(
  hall: Hall,
  floor: Floor,
  laid: LaidLines,
  how: "quickly" | "carefully" | "backwards",
): LaidLines {
  const reference = lineReference(hall.outline, hall.mat, laid);
  const isAllowed = (mats: readonly PlacedMat[]): boolean =>
    checkPlaced(floor, hall.mat, hall.gaps, mats).length === 0;
  const lines: (readonly PlacedMat[])[] = [];
  for (const mats of laid.lines) {
    const before = lines.at(-1) ?? [];
    const tried = shiftsOf(hall, laid, reference.at, mats, how === "backwards").find(
      (it) =>
        it.still || (isAllowed(endsOf(it.mats)) && (how === "quickly" || isAllowed([...before, ...it.mats]))),
    );
    lines.push(tried?.mats ?? mats);
  }
  return { ...laid, lines };
}

function endsOf(mats: readonly PlacedMat[]): readonly PlacedMat[] {
  return mats.length < 3 ? mats : [...mats.slice(0, 1), ...mats.slice(-1)];
}

type Shifted = { readonly still: boolean; readonly mats: readonly PlacedMat[] };

/** The line at its nearest whole centimetres, those further in first, and last where it is. */
function shiftsOf(
  hall: Hall,
  laid: LaidLines,
  linesAt: number,
  mats: readonly PlacedMat[],
  backwards: boolean,
): readonly Shifted[] {
  const { near } = measureLine(hall.outline, hall.mat, laid, mats);
  return shiftsToWhole(near - linesAt, backwards).flatMap((out) => {
    // a line that is moved out meets a slanting wall elsewhere, so it is measured again
    const movedOut = moved(mats, laid.away, out);
    const { start, wall } = measureLine(hall.outline, hall.mat, laid, movedOut);
    return shiftsToWhole(start - wall.at, backwards).map((on) => ({
      still: out === 0 && on === 0,
      mats: moved(movedOut, laid.along, on),
    }));
  });
}

function shiftsToWhole(figure: number, backwards: boolean): readonly number[] {
  const over = figure - Math.floor(figure / 10) * 10;
  if (over < HAIR || over > 10 - HAIR) return [0];
  return backwards ? [-over, 10 - over, 0] : [10 - over, -over, 0];
}

function moved(mats: readonly PlacedMat[], way: Point, by: number): readonly PlacedMat[] {
  return by === 0 ? mats : mats.map((mat) => ({ ...mat, centre: added(mat.centre, scaled(way, by)) }));
}
