// January 1.2, August 0.6 before they are levelled; the twelve average 1 after.
// Always: twelve numbers, none negative, not all nought.

/** A usual year of a class in the evening, January first: a planning assumption, to be edited. Trade notes. */
export const USUAL_SEASON: readonly number[] = [
  1.2, 1.1, 1.05, 0.95, 0.95, 0.92, 0.82, 0.6, 1.15, 1.1, 1.05, 0.75,
];

/** No season at all: every month like another. */
export const LEVEL_SEASON: readonly number[] = Array.from({ length: 12 }, () => 1);

/** The index with an average of 1 over the twelve months, so that an ordinary week stays one. */
export function levelled(season: readonly number[]): readonly number[] {
  const sum = season.reduce((total, each) => total + each, 0);
  if (season.length !== 12 || !(sum > 0)) throw new RangeError(`season: ${season.join(" ")}`);
  return season.map((each) => (each * 12) / sum);
}

/** The season of a month, 1 is January. */
export function seasonOf(season: readonly number[], month: number): number {
  return season[month - 1] ?? 1;
}
