import { rotateAboutOrigin } from "#kernels/geometry";
import type { MostSpace } from "./most-space.ts";
import type { Placed } from "./packing-types.ts";

/** A rectangle in the frame of one axis: its left and lower edge in millimetres; turn 0 along the axis, 1 across. */
export type Laid = { readonly turn: 0 | 1; readonly x: number; readonly y: number };

export function placedOf(space: MostSpace, { turn, x, y }: Laid): Placed {
  const { width, height } = space.turns[turn];
  const angle = (space.axis + 90 * turn) % 180;
  return { centre: rotateAboutOrigin([x + width / 2, y + height / 2], space.axis), angle };
}

/** Null where it lies neither along the axis nor across it. */
export function laidOf(space: MostSpace, { centre, angle }: Placed): Laid | null {
  const quarters = (angle - space.axis) / 90;
  const near = Math.round(quarters);
  if (Math.abs(quarters - near) > 1e-9) return null;
  const turn = near % 2 === 0 ? 0 : 1;
  const { width, height } = space.turns[turn];
  const [x, y] = rotateAboutOrigin(centre, -space.axis);
  return { turn, x: x - width / 2, y: y - height / 2 };
}
