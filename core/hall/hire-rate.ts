import type { Fraction } from "fraction.js";
import { Fraction as Exact } from "fraction.js";
import type { Temporal } from "temporal-polyfill";
import type { HireBand, HirePrice, HireRate, HireTerms } from "./hire-terms.ts";

/** The rate on one date: 14.00 an hour × 1.5 at the weekend × 0.7 from 50 hours a year. */
export type HireRateOnDate = {
  readonly price: HirePrice;
  /** the price after its factors, exact, in minor units an hour or a session */
  readonly amount: Fraction;
  /** the dated rate that holds, null while the first one does */
  readonly since: Temporal.PlainDate | null;
  readonly weekend: Fraction | null;
  readonly band: HireBand | null;
};

const SATURDAY = 6;

export function hireRateOn(terms: HireTerms, date: Temporal.PlainDate): HireRateOnDate {
  const dated = terms.rates.findLast((rate) => begun(rate, date));
  const price = dated?.price ?? terms.price;
  const weekend = date.dayOfWeek >= SATURDAY && !terms.weekendFactor.equals(1) ? terms.weekendFactor : null;
  const band = bandOf(terms);
  const amount = new Exact(price.amount).mul(weekend ?? 1).mul(band?.factor ?? 1);
  return { price, amount, since: dated?.from ?? null, weekend, band };
}

/** A rate "from" a date holds on that date: dates compare as their ISO text does. */
function begun(rate: HireRate, date: Temporal.PlainDate): boolean {
  return rate.from.toString() <= date.toString();
}

/** The band of the most hours that she reaches; its factor holds for every hour, not only those above. */
function bandOf(terms: HireTerms): HireBand | null {
  const { bands, hoursPerYear } = terms;
  if (hoursPerYear === null) return null;
  return bands.findLast((band) => band.fromHours.lte(hoursPerYear)) ?? null;
}
