import type { Temporal } from "temporal-polyfill";
import type { TaxQuestion } from "./tax-types.ts";
import type { TaxYear } from "./tax-years.ts";
import { ukDates } from "./uk-dates.ts";
import { usDates } from "./us-dates.ts";

/** A day on which tax is paid or something is to be done; `coins` below nought comes back, null is nothing to pay. */
export type TaxDate = {
  readonly date: string;
  readonly what: "balance" | "on account" | "instalment" | "register";
  /** the tax year it is for, by its first day */
  readonly year: string;
  readonly coins: number | null;
};

/** From the first day on, in order. What fell due before is taken as paid. */
export function taxDates(
  question: TaxQuestion,
  years: readonly TaxYear[],
  from: Temporal.PlainDate,
): readonly TaxDate[] {
  const all = question.rules === "uk" ? ukDates(question, years) : usDates(question, years, from);
  return all
    .filter(({ date, coins }) => date >= from.toString() && coins !== 0)
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}
