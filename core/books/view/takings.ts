import type { Means } from "../posting/account.ts";
import { type BookLine, sideOf } from "./book-line.ts";

/**
 * A day's takings by means: what came in for classes, what was given back for them, and what was paid out of the
 * same place for costs. Money that only changes its place, like takings brought to the bank, is no taking.
 */
export type Takings = {
  readonly date: string;
  readonly currency: string;
  readonly means: readonly TakingsRow[];
  /** taken less given back, over all means */
  readonly total: number;
};

export type TakingsRow = {
  readonly means: Means;
  readonly taken: number;
  readonly givenBack: number;
  readonly paidOut: number;
  /** brought in from another place or her own pocket, less what was moved away */
  readonly moved: number;
};

const ALL_MEANS: readonly Means[] = ["cash", "card", "bank"];

export function takingsOf(lines: readonly BookLine[], date: string, currency: string): Takings {
  const today = lines.filter((line) => line.date === date && line.commodity === currency);
  const means = ALL_MEANS.map((it) => rowOf(today, it)).filter((row) => {
    return row.taken !== 0 || row.givenBack !== 0 || row.paidOut !== 0 || row.moved !== 0;
  });
  const total = means.reduce((sum, row) => sum + row.taken - row.givenBack, 0);
  return { date, currency, means, total };
}

function rowOf(today: readonly BookLine[], means: Means): TakingsRow {
  const mine = today.filter(({ account }) => account === means);
  const sum = (kind: Kind, sign: 1 | -1) =>
    mine
      .filter((line) => kindOf(today, line.action) === kind && line.amount * sign > 0)
      .reduce((total, { amount }) => total + amount * sign, 0);
  return {
    means,
    taken: sum("classes", 1),
    givenBack: sum("classes", -1),
    paidOut: sum("costs", -1) - sum("costs", 1),
    moved: sum("moved", 1) - sum("moved", -1),
  };
}

type Kind = "classes" | "costs" | "moved";

/** What an action was for: a fee on the way to the bank does not make a cost of the whole move. */
function kindOf(today: readonly BookLine[], action: string): Kind {
  const others = today.filter((line) => line.action === action).map(({ account }) => sideOf(account).side);
  if (others.includes("income")) return "classes";
  return others.includes("cost") && others.filter((side) => side === "means").length === 1
    ? "costs"
    : "moved";
}
