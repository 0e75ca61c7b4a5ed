import { cornerName } from "./corner-names.ts";
import type { Hall } from "./hall.ts";
import { type HallFrame, wallInWords } from "./hall-frame.ts";
import type { LaidLines } from "./lay-lines.ts";
import { measureLine } from "./line-measure.ts";
import type { SetOutString, StringEnd } from "./mat-plan-types.ts";
import { wallBefore } from "./tape-walls.ts";
import { added, dot, scaled } from "./vectors.ts";

/**
 * Where to stretch a string for the near edge of the first line when no wall runs along the lines: its two ends, each
 * so far along a wall from a corner. Null for a plan without a mat.
 */
export function lineString(hall: Hall, frame: HallFrame, laid: LaidLines): SetOutString | null {
  const [mats] = laid.lines;
  if (mats === undefined) return null;
  const { near, start } = measureLine(hall.outline, hall.mat, laid, mats);
  const end = mats.reduce((furthest, mat) => Math.max(furthest, dot(mat.centre, laid.along)), start);
  return stringBetween(hall, frame, laid, near, start, end);
}

/**
 * A string along `along` at `near` (along `away`), from the wall before `start` to the one past `end`; null where it
 * comes to no wall.
 */
export function stringBetween(
  hall: Hall,
  frame: HallFrame,
  ways: Pick<LaidLines, "away" | "along">,
  near: number,
  start: number,
  end: number,
): SetOutString | null {
  const from = stringEnd(hall, frame, ways, near, start, 1);
  const to = stringEnd(hall, frame, ways, near, end, -1);
  return from === null || to === null ? null : { from, to };
}

function stringEnd(
  { outline }: Hall,
  frame: HallFrame,
  { away, along }: Pick<LaidLines, "away" | "along">,
  near: number,
  inside: number,
  way: 1 | -1,
): StringEnd | null {
  const met = wallBefore(outline, away, scaled(along, way), near, way * inside);
  const corner = outline[met?.wall ?? -1];
  if (met === undefined || corner === undefined) return null;
  const point = added(scaled(along, way * met.at), scaled(away, near));
  return {
    wall: wallInWords(outline, frame, met.wall),
    corner: cornerName(met.wall),
    distance: Math.round(Math.hypot(point[0] - corner[0], point[1] - corner[1])),
  };
}
