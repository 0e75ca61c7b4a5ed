import type { Point } from "./point.ts";

/** Distance between two closed segments in the unit of the points; 0 when they cross or touch. */
export function segmentDistance(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsCross(a, b, c, d)) return 0;
  return Math.min(
    pointToSegment(a, c, d),
    pointToSegment(b, c, d),
    pointToSegment(c, a, b),
    pointToSegment(d, a, b),
  );
}

export function pointToSegment(point: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / squared;
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(point[0] - a[0] - held * dx, point[1] - a[1] - held * dy);
}

/** Positive when a, b, c turn left, negative when right, 0 on one line; exact for whole millimetres below 4e7. */
export function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Whether the segments cross at a point inside both; touching is left to the distances of the ends. */
export function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  return abc * abd < 0 && cda * cdb < 0;
}
