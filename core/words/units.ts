import { type Brand, branded } from "./brand.ts";

/** Whole millimetres. Every length inside is one of these; metres live only in documents and on screens. */
export type Millimetres = Brand<number, "Millimetres">;
/** Whole minutes. */
export type Minutes = Brand<number, "Minutes">;

export const MM_PER_METRE = 1000;
/** International foot, exact since 1959: 304.8 mm; an inch is 25.4 mm. */
export const MM_PER_FOOT = 304.8;
export const MM_PER_INCH = 25.4;

/** Rounds metres to the nearest millimetre; throws on a number that is not finite. */
export function millimetresFromMetres(metres: number): Millimetres {
  if (!Number.isFinite(metres)) throw new RangeError(`not a length: ${metres}`);
  return branded<Millimetres>(Math.round(metres * MM_PER_METRE));
}

export function metresFromMillimetres(millimetres: number): number {
  return millimetres / MM_PER_METRE;
}

export function minutes(count: number): Minutes {
  if (!Number.isInteger(count)) throw new RangeError(`not whole minutes: ${count}`);
  return branded<Minutes>(count);
}
