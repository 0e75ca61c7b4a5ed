import type { ExactMinor } from "#core/words";
import { type CountModel, expectedMinimum } from "#kernels/statistics";
import type { Candidate, HallLine, Leaves } from "./compare-types.ts";

export type View = "expected" | "full";
export type Measure = "perSession" | "perYear" | "perHour";

/** What one candidate leaves with the people who would like to come, and when it is full. */
export function hallLine(candidate: Candidate, demand: CountModel, margin: ExactMinor | number): HallLine {
  const { capacity } = candidate;
  const each = margin.valueOf();
  return {
    candidate,
    expected: leaves(candidate, expectedMinimum(demand, capacity), each),
    full: leaves(candidate, capacity, each),
  };
}

function leaves({ sessions, yearCost, doorToDoor }: Candidate, heads: number, margin: number): Leaves {
  const perSession = heads * margin - yearCost / sessions;
  return {
    heads,
    perSession,
    perYear: sessions * heads * margin - yearCost,
    perHour: (perSession * 60) / doorToDoor,
  };
}

/** The lines from the one that leaves most by a measure; equal ones, to a millionth of a coin, as they stand. */
export function ordered(lines: readonly HallLine[], view: View, measure: Measure): readonly HallLine[] {
  return lines.toSorted((a, b) => {
    const more = b[view][measure] - a[view][measure];
    return Math.abs(more) < 1e-6 ? 0 : more;
  });
}

/** Whether the first leaves more than the second by a measure. */
export function isAhead(first: HallLine, second: HallLine, view: View, measure: Measure): boolean {
  return first[view][measure] - second[view][measure] > 1e-6;
}
