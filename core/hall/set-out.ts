import { edgesOf, type Point, type Polygon } from "#kernels/geometry";
import { cornerName } from "./corner-names.ts";
import type { Hall } from "./hall.ts";
import { type HallFrame, hallFrame, SQUARE, wallInWords } from "./hall-frame.ts";
import type { LaidLines } from "./lay-lines.ts";
import type { PlacedMat, SetOut, SetOutLine } from "./mat-plan-types.ts";
import { outwardOf } from "./floor-walls.ts";
import { lengthInWords } from "./length-in-words.ts";
import { setOutSentences } from "./set-out-sentences.ts";
import { cross, direction, dot } from "./vectors.ts";

/**
 * The plan as dimensions for a tape. Lines are measured from the wall they run along, nearest the front (or the
 * left), or from the outermost corner where no wall runs along them; the mats of a line from the wall that the line
 * comes to, along the line's near edge. Millimetres, whole where they are whole to a thousandth.
 */
export function setOut(hall: Hall, laid: LaidLines): SetOut {
  const frame = hallFrame(hall);
  const reference = lineReference(hall.outline, frame, laid);
  const lines = laid.lines.map((mats) => setOutLine(hall, frame, laid, reference.at, mats));
  const figures = lines.flatMap((line) => [line.from, line.first]);
  const figured = {
    toTheCentimetre: figures.every((figure) => figure % 10 === 0),
    linesFrom: reference.words,
    matsFrom: lines[0]?.matsFrom ?? "",
    lengthLies: lengthInWords(hall.outline, frame, laid.lines[0]?.[0]?.angle ?? 0),
    lines,
  };
  return { ...figured, sentences: setOutSentences(figured, "metric") };
}

type Reference = { readonly at: number; readonly words: string };

function lineReference(outline: Polygon, frame: HallFrame, { away, along }: LaidLines): Reference {
  const facing = edgesOf(outline).flatMap(([from, to], wall) => {
    const runsAlong = Math.abs(cross(direction(from, to), along)) < SQUARE;
    if (!runsAlong || dot(outwardOf(outline, wall), away) > 0) return [];
    return [{ at: (dot(from, away) + dot(to, away)) / 2, words: wallInWords(outline, frame, wall) }];
  });
  const corners = outline.map((corner, index) => ({
    at: dot(corner, away),
    words: `corner ${cornerName(index)}, measured square to the lines`,
  }));
  const candidates = facing.length > 0 ? facing : corners;
  return candidates.reduce((nearest, it) => (it.at < nearest.at ? it : nearest));
}

function setOutLine(
  hall: Hall,
  frame: HallFrame,
  { away, along }: LaidLines,
  linesAt: number,
  mats: readonly PlacedMat[],
): SetOutLine {
  const [first] = mats;
  if (first === undefined) throw new RangeError("a line without a mat");
  const lengthwise = Math.abs(dot(wayOf(first), along)) > 0.5;
  const [deep, long] = lengthwise ? [hall.mat.width, hall.mat.length] : [hall.mat.length, hall.mat.width];
  const near = dot(first.centre, away) - deep / 2;
  const start = dot(first.centre, along) - long / 2;
  const wall = wallBefore(hall.outline, { away, along }, near, start);
  return {
    from: tidy(near - linesAt),
    matsFrom: lineStartInWords(hall.outline, frame, along, wall.index),
    first: tidy(start - wall.at),
    centres: mats.map((mat) => tidy(dot(mat.centre, along) - wall.at)),
  };
}

function wayOf({ angle }: PlacedMat): Point {
  return [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
}

type WallBefore = { readonly index: number; readonly at: number };

/** The wall that the near edge of a line meets, going back from its first mat. */
function wallBefore(
  outline: Polygon,
  { away, along }: Pick<LaidLines, "away" | "along">,
  near: number,
  start: number,
): WallBefore {
  // half a millimetre inside the mats, so that an edge on a wall is not lost between two walls
  const level = near + 0.5;
  const met = edgesOf(outline).flatMap(([from, to], index) => {
    const [low, high] = [dot(from, away) - level, dot(to, away) - level];
    if (low > 0 === high > 0) return [];
    const at = dot(from, along) + (low / (low - high)) * (dot(to, along) - dot(from, along));
    return at < start + 1 ? [{ index, at }] : [];
  });
  const [one, ...others] = met;
  if (one === undefined) throw new RangeError(`a line that comes to no wall: ${near}, ${start}`);
  return others.reduce((nearest, it) => (it.at > nearest.at ? it : nearest), one);
}

function lineStartInWords(outline: Polygon, frame: HallFrame, along: Point, wall: number): string {
  const words = wallInWords(outline, frame, wall);
  const square = Math.abs(cross(outwardOf(outline, wall), along)) < SQUARE;
  return square ? words : `${words}, measured along the near edge of the line`;
}

/** Whole where the sum of turns left it a hair off; else to the millimetre. Never −0. */
function tidy(millimetres: number): number {
  return Math.round(millimetres) + 0;
}
