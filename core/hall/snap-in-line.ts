import type { Point, Polygon } from "#kernels/geometry";
import { cornerAt } from "./floor-corners.ts";

/**
 * Where a corner that was put at `to` goes so that its walls stay upright and level: within `reach` of being in line
 * with a neighbouring corner, across or up, it takes that very line. Dragging the corner [8000, 12000] of a plain
 * room to [8040, 13000] with a reach of 100 gives [8000, 13000]; with a reach of 20 it stays [8040, 13000].
 */
export function snapInLine(outline: Polygon, corner: number, to: Point, reach: number): Point {
  const count = outline.length;
  const beside = [cornerAt(outline, (corner + count - 1) % count), cornerAt(outline, (corner + 1) % count)];
  return [
    nearest(
      to[0],
      beside.map(([x]) => x),
      reach,
    ),
    nearest(
      to[1],
      beside.map(([, y]) => y),
      reach,
    ),
  ];
}

/** The nearest of the lines within reach, else the value itself. */
function nearest(value: number, lines: readonly number[], reach: number): number {
  const near = lines.filter((line) => Math.abs(line - value) <= reach);
  return near.toSorted((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? value;
}
