import type { Point, Polygon } from "#kernels/geometry";
import { cross, dot, subtracted } from "../vectors.ts";
import type { Measure } from "./measured-walls.ts";

/** What a measure would be in an outline, and how it changes as each of its corners moves. */
export type Predicted = {
  readonly value: number;
  readonly slopes: readonly { readonly corner: number; readonly x: number; readonly y: number }[];
};

/** Throws for corners that the outline does not have. */
export function predicted(outline: Polygon, { corners }: Pick<Measure, "corners">): Predicted {
  const [a = -1, b = -1, c] = corners;
  return c === undefined ? lengthOf(outline, a, b) : turnAt(outline, a, b, c);
}

/** Turns differ by less than half a circle: 359° is 1° the other way. */
export function residual({ corners, value }: Measure, found: number): number {
  const off = value - found;
  return corners.length === 2 ? off : Math.atan2(Math.sin(off), Math.cos(off));
}

function lengthOf(outline: Polygon, a: number, b: number): Predicted {
  const way = subtracted(at(outline, b), at(outline, a));
  const value = Math.hypot(way[0], way[1]);
  const [x, y] = value === 0 ? [1, 0] : [way[0] / value, way[1] / value];
  return {
    value,
    slopes: [
      { corner: a, x: -x, y: -y },
      { corner: b, x, y },
    ],
  };
}

/** From the way a → b to the way b → c. A way of length ℓ turns by 1/ℓ for each millimetre its end moves aside. */
function turnAt(outline: Polygon, a: number, b: number, c: number): Predicted {
  const [come, go] = [subtracted(at(outline, b), at(outline, a)), subtracted(at(outline, c), at(outline, b))];
  const [first, second] = [aside(come), aside(go)];
  return {
    value: Math.atan2(cross(come, go), dot(come, go)),
    slopes: [
      { corner: a, x: first[0], y: first[1] },
      { corner: b, x: -first[0] - second[0], y: -first[1] - second[1] },
      { corner: c, x: second[0], y: second[1] },
    ],
  };
}

function aside([x, y]: Point): Point {
  const squared = Math.max(1, x * x + y * y);
  return [-y / squared, x / squared];
}

function at(outline: Polygon, corner: number): Point {
  const found = outline[corner];
  if (found === undefined) throw new RangeError(`no corner ${corner} among ${outline.length}`);
  return found;
}
