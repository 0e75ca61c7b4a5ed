// Example: in a hall whose front is at the top of the drawing, "front to back" is a length at 90° and "left to right" 0°.
// Invariant: where mats may lie whichever way holds more, the part has no length of its own.
import { hallFrame } from "#core/hall";
import type { FloorPart } from "./floor-part.ts";

export const lengthWays = ["whichever way holds more", "front to back", "left to right"] as const;
export type LengthWay = (typeof lengthWays)[number];

/** Nearer than this, in degrees, a length is called by its name. */
const NEAR = 0.05;

export function lengthWay(part: FloorPart): LengthWay | "own" {
  const { lengthAlong } = part;
  if (lengthAlong === undefined) return "whichever way holds more";
  const named = (["front to back", "left to right"] as const).find((way) => {
    const apart = Math.abs(lengthAlong - degreesOf(part, way)) % 180;
    return Math.min(apart, 180 - apart) < NEAR;
  });
  return named ?? "own";
}

export function turnedTo(part: FloorPart, way: LengthWay): FloorPart {
  if (way === "whichever way holds more") return freeLength(part);
  return { ...part, lengthAlong: degreesOf(part, way) };
}

/** With mats that lie whichever way holds more. */
export function freeLength(part: FloorPart): FloorPart {
  const { lengthAlong: _, ...free } = part;
  return free;
}

/** Degrees from +x, 0 ≤ degrees < 180, to a hundredth. */
function degreesOf(part: FloorPart, way: Exclude<LengthWay, "whichever way holds more">): number {
  const { front, right } = hallFrame(part);
  const [x, y] = way === "front to back" ? front : right;
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  return Math.round((((degrees % 180) + 180) % 180) * 100) / 100;
}
