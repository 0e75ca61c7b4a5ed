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
import type { YearSession } from "./year-session.ts";

/** The year as a sum: dates, what the heads bring, evenings at each cost, fixed costs, what is left. */
export function classYearWorking(
  { currency, heads }: Evening,
  margin: ExactMinor,
  sessions: readonly YearSession[],
  lost: number,
  fixed: Minor,
): readonly WorkingLine[] {
  const count = sessions.length;
  const brought = heads.mul(margin).mul(count);
  const contribution = sessions.reduce((total, session) => total.add(session.contribution), new Fraction(0));
  return [
    { label: "Evenings", sum: `${count + lost} dates − ${lost} closed`, amount: String(count) },
    {
      label: "What they bring",
      sum: `${count} × ${exactNumberText(heads)} people × ${exactText(margin, currency)}`,
      amount: exactText(brought, currency),
    },
    ...costLines(sessions, currency),
    { label: "The evenings leave", sum: "", amount: exactText(contribution, currency), total: true },
    { label: "Fixed costs", sum: "", amount: moneyText(fixed, currency) },
    { label: "The year leaves", sum: "", amount: exactText(contribution.sub(fixed), currency), total: true },
  ];
}

/** One line for each cost that an evening has in the year, so that winter heating shows. */
function costLines(sessions: readonly YearSession[], currency: Evening["currency"]): readonly WorkingLine[] {
  const costs = [...new Set(sessions.map(({ cost }) => cost))];
  return costs.map((cost) => {
    const within = sessions.filter((session) => session.cost === cost).length;
    const total = exactText(new Fraction(cost).mul(within), currency);
    return {
      label: "less evenings at this cost",
      sum: `${within} × ${moneyText(cost, currency)}`,
      amount: total,
    };
  });
}
