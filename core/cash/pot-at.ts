import { exactNumber, roundToMinor } from "#core/words";
import type { Flow } from "./flow.ts";
import type { TaxDate } from "./tax/tax-dates.ts";
import type { TaxQuestion } from "./tax/tax-types.ts";
import type { TaxYear } from "./tax/tax-years.ts";

/**
 * What should lie in the tax pot after a day, in coins: of each tax year the part of its bill that its receipts until
 * then have earned, and what was still due of the last year, less all that was paid since. Never below nought.
 */
export function potAt(
  day: string,
  question: TaxQuestion,
  years: readonly TaxYear[],
  flows: readonly Flow[],
  dates: readonly TaxDate[],
): number {
  const earned = years.reduce((sum, year, at) => {
    const before = at === 0 ? question.soFar.income : 0;
    return sum + earnedOf(year, before, day, flows);
  }, 0);
  const owing = oldDue(question, years, dates);
  const paid = dates.reduce((sum, { date, coins }) => (date <= day ? sum + (coins ?? 0) : sum), 0);
  const already = question.rules === "us" ? question.paidSoFar : 0;
  return Math.max(0, earned + owing - paid - already);
}

function earnedOf(year: TaxYear, before: number, day: string, flows: readonly Flow[]): number {
  const due = Math.max(0, year.bill.bill);
  if (year.trading.income === 0) return 0;
  const until = year.until.toString() < day ? year.until.toString() : day;
  const received = flows.reduce(
    (sum, { date, coins, business }) =>
      business && coins > 0 && date >= year.from.toString() && date <= until ? sum + coins : sum,
    before,
  );
  const share = exactNumber(Math.min(received, year.trading.income)).div(year.trading.income);
  return roundToMinor(share.mul(due));
}

/** What falls due from the first day on for the tax year before the first. */
function oldDue({ last }: TaxQuestion, [first]: readonly TaxYear[], dates: readonly TaxDate[]): number {
  if (last === null || first === undefined) return 0;
  return dates.reduce((sum, { year, coins }) => (year < first.from.toString() ? sum + (coins ?? 0) : sum), 0);
}
