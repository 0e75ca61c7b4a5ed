// Example: the bottom wall of a floor drawn the usual way has its figure 26 px below it, a wall on the left has
// its figure turned a quarter so that it reads from the right-hand side of the sheet.
// Invariant: a figure is never upside down, and it stands outside the floor whichever way round the corners go.
import type { Point, Polygon } from "#kernels/geometry";
import { toPaper, type Viewport } from "./viewport.ts";

/** A dimension line in pixels: from tick to tick, with hairlines from the wall and the place of its figure. */
export type Dimension = {
  readonly wall: number;
  readonly from: Point;
  readonly to: Point;
  readonly hairlines: readonly (readonly [Point, Point])[];
  readonly label: Point;
  /** degrees clockwise on the paper, −90 ≤ angle < 90 */
  readonly angle: number;
  /** millimetres */
  readonly length: number;
  /** the figure is wider than the wall: it stands level and further out */
  readonly tight: boolean;
  /** the wall is so short that figures would lie on one another: its length stands in the list only */
  readonly crowded: boolean;
};

/** Pixels of wall below which no figure is written: a line of text is about as high. */
const CROWDED = 12;

export type DimensionStyle = { readonly offset: number; readonly figureWidth: number };

const usual: DimensionStyle = { offset: 26, figureWidth: 52 };

/** One dimension for each wall, outside the floor. */
export function placeDimensions(outline: Polygon, view: Viewport, style = usual): readonly Dimension[] {
  const side = signedArea(outline) >= 0 ? 1 : -1;
  return outline.map((corner, wall) => {
    const next = outline[(wall + 1) % outline.length] ?? corner;
    return placeDimension(wall, corner, next, side, view, style);
  });
}

function placeDimension(
  wall: number,
  start: Point,
  end: Point,
  side: number,
  view: Viewport,
  style: DimensionStyle,
): Dimension {
  const length = Math.hypot(end[0] - start[0], end[1] - start[1]);
  const a = toPaper(view, start);
  const b = toPaper(view, end);
  const out = outward(a, b, side);
  const from = along(a, out, style.offset);
  const to = along(b, out, style.offset);
  const tight = length * view.scale < style.figureWidth;
  return {
    wall,
    from,
    to,
    hairlines: [
      [along(a, out, 6), along(a, out, style.offset + 5)],
      [along(b, out, 6), along(b, out, style.offset + 5)],
    ],
    label: along(middle(from, to), out, tight ? 14 : 0),
    angle: tight ? 0 : readable((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI),
    length,
    tight,
    crowded: length * view.scale < CROWDED,
  };
}

/** Turns a direction by half a turn where text along it would stand on its head; upright text reads from the right. */
export function readable(degrees: number): number {
  return ((((degrees + 90) % 180) + 180) % 180) - 90;
}

export function signedArea(outline: Polygon): number {
  return outline.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = outline[(index + 1) % outline.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Unit vector on the paper that points away from the floor; `side` is 1 for corners that go anticlockwise. */
function outward(a: Point, b: Point, side: number): Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return [0, side];
  return [(-(b[1] - a[1]) / length) * side, ((b[0] - a[0]) / length) * side];
}

export function along(point: Point, direction: Point, distance: number): Point {
  return [point[0] + direction[0] * distance, point[1] + direction[1] * distance];
}

export function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
