import { chargedSlot, type HireTerms } from "#core/hall";
import { monthKey, spanCovering, weeklyDates } from "#kernels/calendar";
import { Fraction } from "fraction.js";
import { Temporal } from "temporal-polyfill";
import type { Candidate, ComparedHall, Comparison, Excluded, Slot } from "./compare-types.ts";

export type Candidates = { readonly can: readonly Candidate[]; readonly cannot: readonly Excluded[] };

/** Each hall at each time of the week: those that can be had, with their year, and those that cannot, with why. */
export function candidatesOf(comparison: Comparison): Candidates {
  const all = comparison.halls.flatMap((hall, index) =>
    comparison.slots.map((slot) => candidateOf(comparison, hall, index, slot)),
  );
  return {
    can: all.flatMap((it) => ("why" in it ? [] : [it])),
    cannot: all.flatMap((it) => ("why" in it ? [it] : [])),
  };
}

function candidateOf(
  comparison: Comparison,
  hall: ComparedHall,
  index: number,
  slot: Slot,
): Candidate | Excluded {
  const said = comparison.slots.length === 1 ? hall.name : `${hall.name}, ${slot.said}`;
  const excluded = (why: string): Excluded => ({ hall: index, said, why });
  const { setUp, class: teaching, packDown } = comparison.minutes;
  const [opens, closes] = [slot.start - setUp, slot.start + teaching + packDown];
  if (!isFree(hall, slot.weekday, opens, closes)) {
    return excluded(
      `it is not free on ${slot.said} from ${clock(opens)}, when it must be let in, to ${clock(closes)}`,
    );
  }
  const all = weeklyDates(comparison.year.from, comparison.year.until, slot.weekday);
  const dates = all.filter((date) => isTaught(comparison, hall, date));
  if (dates.length === 0)
    return excluded("no date of the year is left, with its terms and everything closed");
  return {
    hall: index,
    name: hall.name,
    said,
    capacity: hall.capacity,
    sessions: dates.length,
    lost: all.length - dates.length,
    yearCost:
      yearHire(comparison, hall.hire, dates) + dates.length * (hall.travelCost + comparison.otherCost),
    doorToDoor: hall.travelMinutes + setUp + teaching + packDown,
    freeIsStated: hall.free !== null,
  };
}

/** One free span must hold the whole of it: two that only touch may have another group's door between them. */
function isFree({ free }: ComparedHall, weekday: number, opens: number, closes: number): boolean {
  if (free === null) return true;
  return free.some((span) => span.weekday === weekday && span.from <= opens && span.until >= closes);
}

function isTaught({ closures }: Comparison, hall: ComparedHall, date: Temporal.PlainDate): boolean {
  const isTerm = hall.terms === null || spanCovering(hall.terms, date) !== undefined;
  return isTerm && spanCovering([...closures, ...hall.closures], date) === undefined;
}

/** Hire differs by month (heating), weekday and rate only, so each kind of date is worked out once. */
function yearHire({ minutes }: Comparison, terms: HireTerms, dates: readonly Temporal.PlainDate[]): number {
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

/** 1110 is 18:30; what begins before midnight is told as the hour of the day before. */
function clock(minutes: number): string {
  const ofDay = (minutes + 1440) % 1440;
  return `${twoDigits(Math.floor(ofDay / 60))}:${twoDigits(ofDay % 60)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}
