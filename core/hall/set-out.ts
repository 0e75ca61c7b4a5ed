import type { Polygon } from "#kernels/geometry";
import { cornerName } from "./corner-names.ts";
import type { Hall } from "./hall.ts";
import { type HallFrame, hallFrame, wallInWords } from "./hall-frame.ts";
import type { LaidLines } from "./lay-lines.ts";
import { lengthInWords } from "./length-in-words.ts";
import { type LineReference, lineReference, measureLine } from "./line-measure.ts";
import { lineString } from "./line-string.ts";
import type { PlacedMat, SetOut, SetOutLine } from "./mat-plan-types.ts";
import { setOutSentences } from "./set-out-sentences.ts";
import { runsSquare } from "./tape-walls.ts";
import { dot } from "./vectors.ts";

/**
 * The plan as dimensions for a tape. Lines are measured from the wall they run along, nearest the front (or the
 * left), or from the outermost corner where no wall runs along them; the mats of a line from the wall that the line
 * comes to, along the line's near edge. Whole millimetres.
 */
export function setOut(hall: Hall, laid: LaidLines): SetOut {
  const frame = hallFrame(hall);
  const reference = lineReference(hall.outline, hall.mat, laid);
  const measured = laid.lines.map((mats) => setOutLine(hall, frame, laid, reference.at, mats));
  const lines = measured.map((it) => it.line);
  const figured = {
    toTheCentimetre: lines.every((line) => line.from % 10 === 0 && line.first % 10 === 0),
    linesFrom: referenceInWords(hall.outline, frame, reference),
    matsFrom: lines[0]?.matsFrom ?? "",
    matsAlongEdge: measured.some((it) => !it.square),
    lengthLies: lengthInWords(hall.outline, frame, laid.lines[0]?.[0]?.angle ?? 0),
    string: reference.kind === "wall" ? null : lineString(hall, frame, laid),
    lines,
  };
  return { ...figured, sentences: setOutSentences(figured, "metric") };
}

function referenceInWords(outline: Polygon, frame: HallFrame, reference: LineReference): string {
  return reference.kind === "wall"
    ? wallInWords(outline, frame, reference.wall)
    : `corner ${cornerName(reference.corner)}`;
}

type MeasuredLine = { readonly line: SetOutLine; readonly square: boolean };

function setOutLine(
  hall: Hall,
  frame: HallFrame,
  laid: LaidLines,
  linesAt: number,
  mats: readonly PlacedMat[],
): MeasuredLine {
  const { near, start, wall } = measureLine(hall.outline, hall.mat, laid, mats);
  const line = {
    from: whole(near - linesAt),
    matsFrom: wallInWords(hall.outline, frame, wall.wall),
    first: whole(start - wall.at),
    centres: mats.map((mat) => halves(dot(mat.centre, laid.along) - wall.at)),
  };
  return { line, square: runsSquare(hall.outline, wall.wall, laid.along) };
}

/** Never −0. */
function whole(millimetres: number): number {
  return Math.round(millimetres) + 0;
}

/** A mat 0.61 m wide that begins on a whole centimetre has its centre on half of one, 5 mm; 0.665 m on 2.5 mm. */
function halves(millimetres: number): number {
  return Math.round(millimetres * 2) / 2 + 0;
}
