import type { Point, Polygon } from "#kernels/geometry";
import { snapLength } from "./floor-snap.ts";

/** A plain room, its first corner at [0, 0]: corners from bottom left, anticlockwise. Millimetres. */
export function rectangleFloor(width: number, depth: number): Polygon {
  return [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ];
}

/** An L: the room of `width` × `depth` without the corner of `cutWidth` × `cutDepth` at its top right. */
export function lShapedFloor(sides: LSides): Polygon {
  const { width, depth, cutWidth, cutDepth } = sides;
  return [
    [0, 0],
    [width, 0],
    [width, depth - cutDepth],
    [width - cutWidth, depth - cutDepth],
    [width - cutWidth, depth],
    [0, depth],
  ];
}

export type LSides = {
  readonly width: number;
  readonly depth: number;
  readonly cutWidth: number;
  readonly cutDepth: number;
};

/** Walking along the walls: how long this one is and how far to turn at its end, left (anticlockwise) positive. */
export type WalkedWall = { readonly length: number; readonly turn: number };

export type WalkedFloor = {
  readonly outline: Polygon;
  /** millimetres between where the last wall ends and where the first began */
  readonly closingError: number;
  /** whether that is no more than `CLOSES_WITHIN` */
  readonly closes: boolean;
};

/** Every tape reading may be half a centimetre out; over the walls of a hall that is some centimetres. */
export const CLOSES_WITHIN = 50;

/**
 * The floor from its walls, one after the other from [0, 0], the first along +x. The last wall is drawn back to the
 * first corner whatever its length, and how far it was from there is told: 0 for walls that were measured exactly.
 */
export function floorFromWalls(walls: readonly WalkedWall[]): WalkedFloor {
  let heading = 0;
  let at: Point = [0, 0];
  const corners: Point[] = [];
  for (const { length, turn } of walls) {
    corners.push([snapLength(at[0], 1), snapLength(at[1], 1)]);
    const radians = (heading * Math.PI) / 180;
    at = [at[0] + length * Math.cos(radians), at[1] + length * Math.sin(radians)];
    heading += turn;
  }
  const closingError = Math.round(Math.hypot(at[0], at[1]));
  return { outline: corners, closingError, closes: closingError <= CLOSES_WITHIN };
}
