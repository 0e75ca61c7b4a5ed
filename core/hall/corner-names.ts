import type { Polygon } from "#kernels/geometry";

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** Corners are lettered in the order in which they were drawn: A, B … Z, then AA, AB … */
export function cornerName(index: number): string {
  const last = LETTERS[index % LETTERS.length] ?? "";
  return index < LETTERS.length ? last : cornerName(Math.floor(index / LETTERS.length) - 1) + last;
}

/** The wall that leaves corner `index`: "A–B"; the last one comes back to A. */
export function wallName(outline: Polygon, index: number): string {
  return `${cornerName(index)}–${cornerName((index + 1) % outline.length)}`;
}
