import type { Point, Polygon } from "#kernels/geometry";
import { rectangleOf } from "#kernels/packing";
import { snapPoint } from "../floor-snap.ts";
import { cellAt, middleOfCell, type WayGrid } from "./way-grid.ts";

/**
 * A way over cells as few straight strips, each as wide as the way and reaching half its width past both ends, so
 * that together they hold every place of a round thing that goes along. Whole millimetres, a millimetre wider for
 * what rounding takes.
 */
export function wayLegs(grid: WayGrid, cells: readonly number[], width: number): readonly Polygon[] {
  const turns = turnsOf(grid, cells);
  const [first] = turns;
  if (first === undefined) return [];
  const ends: readonly (readonly [Point, Point])[] =
    turns.length === 1
      ? [[first, first]]
      : turns.slice(1).map((to, index): readonly [Point, Point] => [turns[index] ?? to, to]);
  return ends.map(([from, to]) => strip(from, to, width));
}

function strip(from: Point, to: Point, width: number): Polygon {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const centre: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const angle = (Math.atan2(dy, dx) * 180) / Math.PI;
  const piece = { length: Math.hypot(dx, dy), width };
  return rectangleOf({ centre, angle }, piece, width / 2 + 1, 1).map((it) => snapPoint(it, 1));
}

/** The first and the last middle and those between where the way has to turn. */
export function turnsOf(grid: WayGrid, cells: readonly number[]): readonly Point[] {
  const points = cells.map((cell) => middleOfCell(grid, cell));
  const [first] = points;
  if (first === undefined) return [];
  const turns = [first];
  let before = first;
  for (const point of points.slice(1)) {
    if (!isStraight(grid, turns.at(-1) ?? first, point)) turns.push(before);
    before = point;
  }
  return before === first ? turns : [...turns, before];
}

/** Whether every half cell on the straight line between the two lies in an open cell. */
function isStraight(grid: WayGrid, from: Point, to: Point): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const pieces = Math.max(1, Math.ceil((Math.hypot(dx, dy) / grid.step) * 2));
  for (let piece = 0; piece <= pieces; piece++) {
    const share = piece / pieces;
    if (grid.shut[cellAt(grid, [from[0] + dx * share, from[1] + dy * share])] !== 0) return false;
  }
  return true;
}
