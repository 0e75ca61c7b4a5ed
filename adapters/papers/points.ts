import { MM_PER_POINT } from "#core/papers";

/** Millimetres as points, of which an inch has 72. */
export function inPoints(millimetres: number): number {
  return millimetres / MM_PER_POINT;
}
