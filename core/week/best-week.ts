import type { Limits, Outcome, Solver } from "#kernels/search";
import { checkWeek } from "./check-week.ts";
import { type Arc, weekArcs } from "./week-arcs.ts";
import { type WeekAsk, weekProgramme } from "./week-programme.ts";
import type { Week } from "./week-types.ts";

/** A week with the pieces its days may be made of, worked out once, and what solves programmes. */
export type WeekSearch = {
  readonly week: Week;
  readonly arcs: readonly Arc[];
  readonly solver: Solver;
  /** how far the search for whole numbers may go; in nodes, so that every machine answers the same */
  readonly limits: Limits;
};

/** `chosen`: positions of candidates in their order; `bound`: no week has more of what was asked for. */
export type FoundWeek = {
  readonly chosen: readonly number[];
  readonly value: number;
  readonly bound: number;
};

/** "unknown": the search was stopped before it had any week, or before it knew that there is none. */
export type WeekOutcome =
  | ({ readonly kind: "found" } & FoundWeek)
  | { readonly kind: "impossible" }
  | { readonly kind: "unknown" };

// sixty candidates in eight places need a few nodes; ten thousand take minutes
const USUAL: Limits = { nodes: 10_000 };

export function weekSearch(week: Week, solver: Solver, limits: Limits = USUAL): WeekSearch {
  return { week, arcs: weekArcs(week), solver, limits };
}

/** The same search under other limits, promises or fixed times; only these last change the pieces of a day. */
export function searchWith(search: WeekSearch, week: Week): WeekSearch {
  const same = week.commitments === search.week.commitments;
  return { ...search, week, arcs: same ? search.arcs : weekArcs(week) };
}

/**
 * The best week for what is asked: exact where value and bound meet. What comes back has passed the checker, which
 * shares no code with the programme; throws if it did not.
 */
export function bestWeek({ week, arcs, solver, limits }: WeekSearch, ask: WeekAsk): WeekOutcome {
  const { programme, columns } = weekProgramme(week, arcs, ask);
  const outcome = solver.solve(programme, limits);
  const found = answerOf(outcome);
  if (found === null) return { kind: outcome.kind === "impossible" ? "impossible" : "unknown" };
  const chosen = columns.chosen.flatMap((column, at) => ((found.columns[column] ?? 0) > 0.5 ? [at] : []));
  const faults = checkWeek(week, chosen);
  if (faults.length > 0) throw new Error(`the week found is none: ${faults.join("; ")}`);
  const value = Math.round(found.value);
  // all sums are whole, so the bound is too
  return { kind: "found", chosen, value, bound: Math.max(value, Math.floor(found.bound + 1e-6)) };
}

type Bounded = { readonly columns: readonly number[]; readonly value: number; readonly bound: number };

function answerOf(outcome: Outcome): Bounded | null {
  switch (outcome.kind) {
    case "best":
      return { columns: outcome.columns, value: outcome.value, bound: outcome.value };
    case "stopped":
      return outcome.found === null ? null : { ...outcome.found, bound: outcome.bound };
    case "impossible":
      return null;
    case "endless":
    case "failed":
      throw new Error(`the week has no programme: ${outcome.kind === "failed" ? outcome.why : "endless"}`);
  }
}
