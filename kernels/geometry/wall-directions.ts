import type { Polygon } from "./point.ts";
import { edgesOf } from "./polygon-distance.ts";

const SAME_DIRECTION = 0.001; // degrees

/**
 * Every distinct direction of the walls in degrees modulo 90 (a wall and its perpendicular count as one),
 * that with the most wall first, equal ones by angle. Directions within 0.001° are one.
 */
export function wallDirections(outline: Polygon): readonly number[] {
  const found: { degrees: number; length: number }[] = [];
  for (const [[ax, ay], [bx, by]] of edgesOf(outline)) {
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) continue;
    const degrees = quarterTurnAngle((Math.atan2(by - ay, bx - ax) * 180) / Math.PI);
    const same = found.find((other) => gapBetween(other.degrees, degrees) <= SAME_DIRECTION);
    if (same === undefined) found.push({ degrees, length });
    else same.length += length;
  }
  return found.sort((a, b) => b.length - a.length || a.degrees - b.degrees).map((each) => each.degrees);
}

/** The angle brought into 0 ≤ angle < 90; a hair (1e-9) below a quarter turn is 0. */
export function quarterTurnAngle(degrees: number): number {
  const turned = ((degrees % 90) + 90) % 90;
  return turned < 1e-9 || 90 - turned < 1e-9 ? 0 : turned;
}

function gapBetween(a: number, b: number): number {
  const apart = Math.abs(a - b);
  return Math.min(apart, 90 - apart);
}
