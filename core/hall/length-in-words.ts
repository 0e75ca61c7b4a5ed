import { edgesOf, type Polygon } from "#kernels/geometry";
import { wallName } from "./corner-names.ts";
import { type HallFrame, SQUARE } from "./hall-frame.ts";
import { cross, direction, dot } from "./vectors.ts";

/** How the length of a mat lies: "front to back", "left to right", or by a wall where neither is so. */
export function lengthInWords(outline: Polygon, frame: HallFrame, angle: number): string {
  const way = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)] as const;
  if (Math.abs(cross(way, frame.front)) < SQUARE) return "front to back";
  if (Math.abs(cross(way, frame.right)) < SQUARE) return "left to right";
  const walls = edgesOf(outline).map(([from, to]) => direction(from, to));
  const beside = walls.findIndex((wall) => Math.abs(cross(way, wall)) < SQUARE);
  if (beside >= 0) return `along the wall ${wallName(outline, beside)}`;
  const square = walls.findIndex((wall) => Math.abs(dot(way, wall)) < SQUARE);
  if (square >= 0) return `square to the wall ${wallName(outline, square)}`;
  const turned = Math.asin(Math.min(1, Math.abs(cross(way, walls[0] ?? [1, 0])))) * (180 / Math.PI);
  return `at ${Math.round(turned)}° to the wall ${wallName(outline, 0)}`;
}
