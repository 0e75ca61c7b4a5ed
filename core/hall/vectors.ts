import type { Point } from "#kernels/geometry";

export function added(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1]];
}

export function subtracted(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1]];
}

export function scaled(a: Point, by: number): Point {
  return [a[0] * by, a[1] * by];
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

/** Positive when b is to the left of a. */
export function cross(a: Point, b: Point): number {
  return a[0] * b[1] - a[1] * b[0];
}

/** One long, from one point towards another; [0, 0] where they are the same point. */
export function direction(from: Point, to: Point): Point {
  const way = subtracted(to, from);
  const length = Math.hypot(way[0], way[1]);
  return length === 0 ? [0, 0] : scaled(way, 1 / length);
}
