import type { Point } from "#kernels/geometry";

/** A tape is read to the centimetre. */
export const SNAP = 10;

/** The nearest whole step, ten millimetres unless told; never −0. */
export function snapLength(millimetres: number, step: number = SNAP): number {
  return Math.round(millimetres / step) * step + 0;
}

export function snapPoint([x, y]: Point, step: number = SNAP): Point {
  return [snapLength(x, step), snapLength(y, step)];
}
