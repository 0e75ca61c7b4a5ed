import { edgesOf, type Point, type Polygon, polygonDistance } from "#kernels/geometry";
import { surroundingsOf } from "./obstacles.ts";
import type { Floor, Piece, Placed } from "./packing-types.ts";
import { rectangleOf } from "./rectangle-of.ts";

/** Rectangles are taken this much smaller on each side, in millimetres: touching is not overlapping. */
const HAIR = 1e-4;

/** Tells of a rectangle at any angle whether the floor allows it, apart from the other rectangles. */
export function standsFree(floor: Floor, piece: Piece, wall: number): (placed: Placed) => boolean {
  const { hull, obstacles } = surroundingsOf(floor, wall);
  const sides = edgesOf(hull).map(([[ax, ay], [bx, by]]) => {
    const length = Math.hypot(bx - ax, by - ay);
    return { x: ax, y: ay, nx: (by - ay) / length, ny: (ax - bx) / length };
  });
  const rounds = obstacles.map(({ polygon, distance }) => ({ polygon, distance, ...roundOf(polygon) }));
  const reach = Math.hypot(piece.length, piece.width) / 2;
  return (placed) => {
    const rectangle = rectangleOf(placed, piece, -HAIR, -HAIR);
    // within a convex hull the furthest corner is the nearest to a wall
    for (const { x, y, nx, ny } of sides)
      for (const [px, py] of rectangle) if (nx * (px - x) + ny * (py - y) > HAIR - wall) return false;
    return rounds.every(({ polygon, distance, centre, radius }) => {
      const away = Math.hypot(placed.centre[0] - centre[0], placed.centre[1] - centre[1]);
      if (away > reach + radius + distance) return true;
      const apart = polygonDistance(polygon, rectangle);
      return distance > HAIR ? apart >= distance - HAIR : apart > 0;
    });
  };
}

function roundOf(polygon: Polygon): { readonly centre: Point; readonly radius: number } {
  const size = Math.max(1, polygon.length);
  const x = polygon.reduce((sum, corner) => sum + corner[0], 0) / size;
  const y = polygon.reduce((sum, corner) => sum + corner[1], 0) / size;
  const radius = Math.max(0, ...polygon.map((corner) => Math.hypot(corner[0] - x, corner[1] - y)));
  return { centre: [x, y], radius };
}
