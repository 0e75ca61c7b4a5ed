import type { CurrencyCode, Minor, Minutes } from "#core/words";
import type { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";

export type HirePrice = { readonly per: "hour" | "session"; readonly amount: Minor };
export type HireRate = { readonly from: Temporal.PlainDate; readonly price: HirePrice };
export type HireHeating = { readonly perHour: Minor; readonly months: readonly number[] };
export type HireBand = { readonly fromHours: Fraction; readonly factor: Fraction };

/**
 * What a hall charges, read and found sound:
 * { currency: "GBP", price: { per: "hour", amount: 1400 }, minimum: 60, increment: 30, … }.
 * Rates are in the order of their dates and bands in the order of their hours, none twice.
 */
export type HireTerms = {
  readonly currency: CurrencyCode;
  readonly price: HirePrice;
  readonly rates: readonly HireRate[];
  readonly minimum: Minutes;
  readonly increment: Minutes;
  readonly freeBefore: Minutes;
  readonly freeAfter: Minutes;
  readonly heating: HireHeating | null;
  /** share of the rate at which charged set-up minutes are billed; 1 is the full rate */
  readonly setUpFactor: Fraction;
  readonly weekendFactor: Fraction;
  readonly bands: readonly HireBand[];
  /** hours a year she hires there; null when not stated, and then no band applies */
  readonly hoursPerYear: Fraction | null;
};
