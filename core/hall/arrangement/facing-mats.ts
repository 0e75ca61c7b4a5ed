import { boundsOf, type Point, type Polygon, rotateAboutOrigin } from "#kernels/geometry";
import { checkPlaced, facingPlan, type FacingPlan, type Floor } from "#kernels/packing";
import { allowedLines } from "../allowed-lines.ts";
import type { Hall } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { type LaidLines, layLines } from "../lay-lines.ts";
import { lineReference } from "../line-measure.ts";
import { floorToFill } from "../mat-plan.ts";
import { setOut } from "../set-out.ts";
import { dot } from "../vectors.ts";
import type { ArrangementOptions, FacingMatPlan, Middle } from "./arrangement-types.ts";
import { longestPart } from "./longest-part.ts";
import { axesToTry, boundOverAll } from "./axes-to-try.ts";
import { packedLines } from "./packed-lines.ts";

/** 2 m: room to walk past two people who lie with their heads to it. Common practice, no source. */
export const USUAL_MIDDLE = 2000;

/**
 * Two banks of lines that face a clear middle, the teacher in it. Her zone, where there is one, stays clear too. The
 * middle is held against the rounded plan as well: no mat lies in it.
 */
export function facingMats(
  hall: Hall,
  { middle: middleWidth = hall.middleWidth ?? USUAL_MIDDLE }: Pick<ArrangementOptions, "middle"> = {},
): FacingMatPlan {
  const tried = axesToTry(hall);
  const found = facingPlan(floorToFill(hall), hall.mat, hall.gaps, tried.axes, middleWidth);
  const exact = layLines(hall, packedLines(found.lines), found.direction, hallFrame(hall));
  const { laid, strip } = laidWithMiddle(hall, found, exact);
  return {
    arrangement: "facing",
    ...boundOverAll(hall, tried, found),
    mats: laid.lines.flat(),
    setOut: setOut(hall, laid),
    middle: strip === null ? null : middleAmong(hall, laid, { outline: strip, width: middleWidth }),
    middleWidth,
  };
}

type WithMiddle = { readonly laid: LaidLines; readonly strip: Polygon | null };

/**
 * The lines rounded, with the middle between them. The bank before it is packed against it to less than a centimetre,
 * so where the lines do not come out whole the middle moves on by as little as gives them room.
 */
function laidWithMiddle(hall: Hall, found: FacingPlan, exact: LaidLines): WithMiddle {
  const first = middleStrip(hall.outline, found, 0);
  if (first === null) return { laid: exact, strip: null };
  let held: WithMiddle | undefined;
  for (const by of movesOf(hall, found, exact, first)) {
    const strip = middleStrip(hall.outline, found, by);
    const floor = floorWith(hall, strip);
    if (held !== undefined && checkPlaced(floor, hall.mat, hall.gaps, exact.lines.flat()).length > 0) break;
    const laid = allowedLines(hall, floor, exact);
    held ??= { laid, strip };
    if (setOut(hall, laid).toTheCentimetre) return { laid, strip };
  }
  return held ?? { laid: exact, strip: first };
}

/** Not at all, or to whole centimetres from where lines are measured, towards the bank that has room. Millimetres. */
function movesOf(hall: Hall, { direction }: FacingPlan, laid: LaidLines, strip: Polygon): readonly number[] {
  const on = dot(rotateAboutOrigin([0, 1], direction), laid.away) > 0 ? 1 : -1;
  const near = Math.min(...strip.map((it) => dot(it, laid.away)));
  const figure = near - lineReference(hall.outline, hall.mat, laid).at;
  const over = on * (Math.ceil(figure / 10) * 10 - figure);
  const least = over < 0 ? over + 10 : over;
  return [0, least, least + 10, least + 20];
}

/** What the mats keep clear of, the middle included. */
function floorWith(hall: Hall, strip: Polygon | null): Floor {
  const floor = floorToFill(hall);
  return strip === null ? floor : { ...floor, keepClear: [...floor.keepClear, strip] };
}

/** From the least to the greatest x of the hall turned by −direction, moved up by so much. */
function middleStrip(outline: Polygon, { middle, direction }: FacingPlan, by: number): Polygon | null {
  if (middle === null) return null;
  const { left, right, bottom } = boundsOf(outline.map((it) => rotateAboutOrigin(it, -direction)));
  const [low, high] = [bottom + middle.from + by, bottom + middle.to + by];
  const corners: readonly Point[] = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
  return corners.map((it) => rotateAboutOrigin(it, direction));
}

/** Where a strip lies among the lines. */
export function middleAmong(
  hall: Hall,
  laid: LaidLines,
  { outline: strip, width }: Pick<Middle, "outline" | "width">,
): Middle {
  const places = strip.map((it) => dot(it, laid.away));
  const [near, far] = [Math.min(...places), Math.max(...places)];
  const reference = lineReference(hall.outline, hall.mat, laid);
  const before = laid.lines.filter(([first]) => first !== undefined && dot(first.centre, laid.away) < near);
  return {
    outline: strip,
    afterLine: before.length,
    from: Math.round(near - reference.at),
    width,
    teacher: longestPart(hall.outline, laid.along, laid.away, (near + far) / 2),
  };
}
