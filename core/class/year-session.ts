import type { ExactMinor, Minor } from "#core/words";

/** One session of the year, costed on its own date: heating in its months, a new rate from its day. */
export type YearSession = {
  readonly date: string;
  readonly month: string;
  readonly hire: Minor;
  readonly cost: Minor;
  readonly contribution: ExactMinor;
};
