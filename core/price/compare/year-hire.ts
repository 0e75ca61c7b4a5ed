import { chargedSlot, type HireTerms } from "#core/hall";
import { monthKey } from "#kernels/calendar";
import { Fraction } from "fraction.js";
import { Temporal } from "temporal-polyfill";
import type { Comparison } from "./compare-types.ts";

/**
 * What a hall charges for all its dates, in minor units. Hire differs by month (heating), weekday and rate only, so
 * each kind of date is worked out once.
 */
export function yearHire(
  { minutes }: Comparison,
  terms: HireTerms,
  dates: readonly Temporal.PlainDate[],
): number {
  const counted = withHours(terms, minutes, dates);
  const kinds = new Map<string, number>();
  return dates.reduce((sum, date) => {
    const rate = counted.rates.findLastIndex(({ from }) => Temporal.PlainDate.compare(from, date) <= 0);
    const kind = `${monthKey(date)} ${rate}`;
    const hire = kinds.get(kind) ?? chargedSlot(counted, minutes, date).hire;
    kinds.set(kind, hire);
    return sum + hire;
  }, 0);
}

/** Volume bands go by the hours this class hires in a year, unless the hours are stated. */
function withHours(
  terms: HireTerms,
  minutes: Comparison["minutes"],
  dates: readonly Temporal.PlainDate[],
): HireTerms {
  const [first] = dates;
  if (terms.hoursPerYear !== null || terms.bands.length === 0 || first === undefined) return terms;
  const end = first.add({ years: 1 });
  const inYear = dates.filter((date) => Temporal.PlainDate.compare(date, end) < 0);
  const { charged } = chargedSlot(terms, minutes, first);
  return { ...terms, hoursPerYear: new Fraction(charged * inYear.length, 60) };
}
