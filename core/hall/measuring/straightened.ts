// Example: a room whose corners were marked as 89.2°, 90.9°, 89.6° and 90.3° comes out with four right angles and
// walls as near to those marked as right angles allow.
// Invariant: corners that are further from square than `within` stay free; no corner is added or taken away.
import { crossesItself, type Polygon, rotatePolygon, wallDirections } from "#kernels/geometry";
import { snapPoint } from "../floor-snap.ts";
import { fitOutline } from "./fit-outline.ts";
import { predicted } from "./measure-of.ts";
import type { Measure } from "./measured-walls.ts";

const DEGREE = Math.PI / 180;

/** Lengths and other angles give way evenly: a centimetre weighs as much as a quarter of a degree. */
const LENGTH_ERROR = 10;
const ANGLE_ERROR = 0.25 * DEGREE;
/** A corner to be square is held to a millionth of a degree. */
const SQUARE_ERROR = 1e-6 * DEGREE;

/**
 * The outline with every corner that is within so many degrees of square made square, turned by less than half a
 * right angle so that the direction with the most wall lies level or upright, to whole steps in millimetres. Only
 * turned and rounded where nothing is near square, or where square corners cannot be had without walls that cross.
 */
export function straightened(outline: Polygon, within: number, step: number): Polygon {
  return rounded(levelled(squared(outline, within)), step);
}

function squared(outline: Polygon, within: number): Polygon {
  // the fit holds the direction of the first wall, which must be along +x
  const at = firstDirection(outline);
  const turned = rotatePolygon(outline, -at);
  const measures = [...turned.keys()].flatMap((index) => measuresAt(turned, index, within));
  if (!measures.some((it) => it.error === SQUARE_ERROR)) return outline;
  const fitted = fitOutline(measures, turned)?.outline;
  if (fitted === undefined || crossesItself(fitted.map((it) => snapPoint(it, 1))) !== null) return outline;
  return rotatePolygon(fitted, at);
}

function firstDirection([a = [0, 0], b = [1, 0]]: Polygon): number {
  return (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
}

/** The wall that leaves a corner, and the turn at its end. */
function measuresAt(outline: Polygon, index: number, within: number): readonly Measure[] {
  const count = outline.length;
  const [next, after] = [(index + 1) % count, (index + 2) % count];
  const turn = predicted(outline, { corners: [index, next, after] }).value;
  const square = (Math.sign(turn) * Math.PI) / 2;
  const isSquare = Math.abs(turn - square) <= within * DEGREE;
  const told = true;
  return [
    {
      kind: "wall",
      index,
      corners: [index, next],
      value: predicted(outline, { corners: [index, next] }).value,
      error: LENGTH_ERROR,
      told,
    },
    {
      kind: "turn",
      index: next,
      corners: [index, next, after],
      value: isSquare ? square : turn,
      error: isSquare ? SQUARE_ERROR : ANGLE_ERROR,
      told,
    },
  ];
}

function levelled(outline: Polygon): Polygon {
  const most = wallDirections(outline)[0] ?? 0;
  return rotatePolygon(outline, most > 45 ? 90 - most : -most);
}

/** Nearer to level or upright than this over its whole length, a wall is meant to be so. Millimetres. */
const LEVEL = 0.05;

/** Whole steps; both ends of a level or upright wall are rounded to the same side. */
function rounded(outline: Polygon, step: number): Polygon {
  const whole = outline.map((it): [number, number] => [...snapPoint(it, step)]);
  // twice round, so that a row of level walls that runs over the first corner is of one piece too
  for (let index = 0; index < 2 * outline.length; index++) {
    const [from, to] = [index % outline.length, (index + 1) % outline.length];
    for (const axis of [0, 1] as const) {
      const apart = Math.abs((outline[from]?.[axis] ?? 0) - (outline[to]?.[axis] ?? 0));
      const [first, second] = [whole[from], whole[to]];
      if (apart < LEVEL && first !== undefined && second !== undefined) second[axis] = first[axis];
    }
  }
  return whole;
}
