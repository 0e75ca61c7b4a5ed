import { bad, good, problem, type Problem, type Result } from "#core/words";
import { columnFitness } from "./column-fitness.ts";
import { type ColumnFacts, columnFacts } from "./column-facts.ts";
import type { ColumnUse, HeadsColumn, VisitColumn } from "./column-use.ts";
import { columnList, type Table } from "./table.ts";

export type Shape<Use extends ColumnUse> = {
  readonly needed: readonly Use[];
  readonly optional: readonly Use[];
};

export const visitsShape: Shape<VisitColumn> = {
  needed: ["date", "person"],
  optional: ["surname", "amount"],
};
export const headsShape: Shape<HeadsColumn> = {
  needed: ["date", "heads"],
  optional: ["capacity", "turnedAway", "waiting", "newcomers"],
};

/** Column numbers from 0, for what they are for. */
export type ColumnChoice<Use extends ColumnUse> = Readonly<Partial<Record<Use, number>>>;

/**
 * The columns to read: those named or numbered (from 1) in `given`, the others as their names and values suggest.
 * Problems: "table-empty", "column-unknown" and "column-twice" at the use, "column-unclear" where a needed one is
 * neither given nor seen.
 */
export function chooseColumns<Use extends ColumnUse>(
  table: Table,
  shape: Shape<Use>,
  given?: Readonly<Partial<Record<Use, string>>>,
): Result<ColumnChoice<Use>> {
  if (table.rows.length === 0) return bad(noRows());
  const problems: Problem[] = [];
  const chosen = new Map<Use, number>();
  const uses = [...shape.needed, ...shape.optional];
  const told = Object.keys(given ?? {});
  for (const use of uses) {
    const called = given?.[use];
    if (called === undefined) continue;
    const column = columnCalled(table, called);
    if (column === undefined) problems.push(unknown(table, use, called));
    else if ([...chosen.values()].includes(column)) problems.push(twice(use, called));
    else chosen.set(use, column);
  }
  if (problems.length > 0) return bad(...problems);
  // the date comes first in every shape: what is there once a day shows only once the days are known
  const dated = uses.find((use) => use === "date");
  let facts = columnFacts(table, dated === undefined ? undefined : chosen.get(dated));
  for (const use of uses) {
    // a surname goes with a column of names that was seen, not with one that was told and may be whole
    if (chosen.has(use) || (use === "surname" && told.includes("person"))) continue;
    const column = suggested(facts, use, [...chosen.values()]);
    if (use === "date") facts = columnFacts(table, column);
    if (column !== undefined) chosen.set(use, column);
    else if (shape.needed.includes(use)) problems.push(unclear(table, use));
  }
  if (problems.length > 0) return bad(...problems);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the keys are those of the map
  return good(Object.fromEntries(chosen) as ColumnChoice<Use>);
}

function columnCalled(table: Table, called: string): number | undefined {
  const wanted = called.trim().toLowerCase();
  const at = (table.names ?? []).findIndex((name) => name.toLowerCase() === wanted);
  if (at >= 0) return at;
  const number = /^\d{1,4}$/.test(wanted) ? Number(wanted) : 0;
  return number >= 1 && number <= table.columns ? number - 1 : undefined;
}

function suggested(
  facts: readonly ColumnFacts[],
  use: ColumnUse,
  taken: readonly number[],
): number | undefined {
  const free = facts.filter((it) => !taken.includes(it.column) && it.filled > 0);
  const best = free
    .map((it) => ({ column: it.column, fit: columnFitness(it, use) }))
    .reduce<{ column: number; fit: number } | undefined>(
      (most, it) => (it.fit > (most?.fit ?? 0) ? it : most),
      undefined,
    );
  return best?.column;
}

const CALLED: Readonly<Record<ColumnUse, string>> = {
  person: "the people",
  surname: "the surnames",
  date: "the dates",
  amount: "the amounts",
  heads: "how many came",
  capacity: "the capacity",
  turnedAway: "how many were turned away",
  waiting: "the waiting list",
  newcomers: "the newcomers",
};

function noRows(): Problem {
  const says = "There is no row with values in it.";
  return problem(
    "table-empty",
    "",
    says,
    "Look whether it is the right file and whether it was saved whole.",
  );
}

function unknown(table: Table, use: ColumnUse, called: string): Problem {
  const says = `There is no column “${called.slice(0, 40)}”.`;
  return problem("column-unknown", use, says, `There are: ${columnList(table)}.`);
}

function twice(use: ColumnUse, called: string): Problem {
  const says = `The column “${called.slice(0, 40)}” cannot be two things.`;
  return problem("column-twice", use, says, `Say another column for ${CALLED[use]}.`);
}

function unclear(table: Table, use: ColumnUse): Problem {
  const says = `No column looks like ${CALLED[use]}.`;
  return problem("column-unclear", use, says, `Say which it is; there are: ${columnList(table)}.`);
}
