import type { Evening } from "#core/price";
import {
  type ExactMinor,
  exactNumberText,
  exactText,
  type Minor,
  moneyText,
  type WorkingLine,
} from "#core/words";
import { Fraction } from "fraction.js";
import type { SessionsAtCost } from "./class-year-types.ts";

/** The year as a sum: dates, what the heads bring, evenings at each cost, fixed costs, what is left. */
export function classYearWorking(
  { currency, heads }: Evening,
  margin: ExactMinor,
  costs: readonly SessionsAtCost[],
  lost: number,
  fixed: Minor,
): readonly WorkingLine[] {
  const count = costs.reduce((total, { sessions }) => total + sessions, 0);
  const brought = heads.mul(margin).mul(count);
  const spent = costs.reduce(
    (total, { cost, sessions }) => total.add(new Fraction(cost).mul(sessions)),
    new Fraction(0),
  );
  const contribution = brought.sub(spent);
  return [
    { label: "Evenings", sum: `${count + lost} dates − ${lost} closed`, amount: String(count) },
    {
      label: "What they bring",
      sum: `${count} × ${exactNumberText(heads)} people × ${exactText(margin, currency)}`,
      amount: exactText(brought, currency),
    },
    // one line for each cost that an evening has in the year, so that winter heating shows
    ...costs.map(({ cost, sessions }) => ({
      label: "less evenings at this cost",
      sum: `${sessions} × ${moneyText(cost, currency)}`,
      amount: exactText(new Fraction(cost).mul(sessions), currency),
    })),
    { label: "The evenings leave", sum: "", amount: exactText(contribution, currency), total: true },
    { label: "Fixed costs", sum: "", amount: moneyText(fixed, currency) },
    { label: "The year leaves", sum: "", amount: exactText(contribution.sub(fixed), currency), total: true },
  ];
}
