import { Temporal } from "temporal-polyfill";
import type { TaxDate } from "./tax-dates.ts";
import type { TaxQuestion } from "./tax-types.ts";
import type { TaxYear } from "./tax-years.ts";

/**
 * Estimates on 15 April, 15 June, 15 September and 15 January, a quarter of the year's bill each; of the year in which
 * it begins what is not paid yet, spread over the dates that are left. On 15 April after the year the rest. A day on a
 * weekend moves on to Monday; holidays are not looked at.
 */
export function usDates(
  question: TaxQuestion,
  years: readonly TaxYear[],
  from: Temporal.PlainDate,
): readonly TaxDate[] {
  const [first] = years;
  const { last } = question;
  const before: readonly TaxDate[] =
    last === null || first === undefined
      ? []
      : [
          {
            date: workday(first.from.year, 4),
            what: "balance",
            year: first.from.subtract({ years: 1 }).toString(),
            coins: last.bill - last.onAccount,
          },
        ];
  return [
    ...before,
    ...years.flatMap((year, at) => yearDates(year, at === 0 ? question.paidSoFar : 0, from.toString())),
  ];
}

function yearDates({ from: start, bill, chosen }: TaxYear, paid: number, from: string): readonly TaxDate[] {
  const year = start.toString();
  const left = bill.bill - paid;
  const least = chosen.table.rules === "us" ? chosen.table.instalmentsFrom : 0;
  const quarters = [
    workday(start.year, 4),
    workday(start.year, 6),
    workday(start.year, 9),
    workday(start.year + 1, 1),
  ].filter((date) => date >= from);
  const settled = workday(start.year + 1, 4);
  if (bill.bill < least || left <= 0 || quarters.length === 0)
    return [{ date: settled, what: "balance", year, coins: left }];
  const each = Math.floor(left / quarters.length);
  return quarters.map((date, at) => ({
    date,
    what: "instalment",
    year,
    coins: at === quarters.length - 1 ? left - each * at : each,
  }));
}

/** The 15th of a month, or the Monday after where it is a weekend. */
function workday(year: number, month: number): string {
  const day = Temporal.PlainDate.from({ year, month, day: 15 });
  return day.add({ days: day.dayOfWeek > 5 ? 8 - day.dayOfWeek : 0 }).toString();
}
