import { readHireTerms } from "#core/hall";
import {
  bad,
  type CurrencyCode,
  good,
  type Problem,
  problem,
  type Result,
  readAmount,
  readCurrency,
  readDate,
  readMinutes,
  together,
  togetherInOrder,
} from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { readDemand } from "../heads/read-demand.ts";
import { ladderYield } from "../ladder/ladder-checks.ts";
import { readTiers } from "../ladder/read-tiers.ts";
import { readClosedSpans, readWeekday } from "../pass/read-pass.ts";
import { backwardHours } from "./backward-hours.ts";
import type { CompareDocument, ComparedHallDocument } from "./compare-document.ts";
import type { ComparedHall, Comparison, FreeSpan, Slot } from "./compare-types.ts";
import { readClock, readSlots } from "./read-slots.ts";
import { readWays } from "./read-ways.ts";

/** Reads what a comparison document says, every problem at its place. Problems: "halls-missing", "slots-missing", "class-over-midnight", "free-hours-backwards" and those of its parts. */
export function readComparison(document: CompareDocument): Result<Comparison> {
  const currency = readCurrency(document.currency);
  if (!currency.ok) return currency;
  const { minutes } = document;
  const read = together({
    slots: readSlots(document.slots),
    minutes: together({
      setUp: readMinutes(minutes.setUp, "minutes.setUp"),
      class: readMinutes(minutes.class, "minutes.class", { least: 1, most: 1440 }),
      packDown: readMinutes(minutes.packDown, "minutes.packDown"),
    }),
    year: readSpan(document.year, "year"),
    closures: readClosedSpans(document.year.closures, "year.closures"),
    otherCost: readAmount(document.otherCost, currency.value, "otherCost"),
    perHead: readAmount(document.perHead, currency.value, "perHead"),
    tiers: readTiers(document.prices, document.mix, currency.value),
    demand: readDemand(document.heads, document.dispersion),
    halls: readHalls(document.halls, currency.value),
  });
  if (!read.ok) return read;
  const late = overMidnight(read.value.slots, read.value.minutes);
  if (late.length > 0) return bad(...late);
  const { tiers, perHead, ...parts } = read.value;
  return good({ currency: currency.value, margin: ladderYield(tiers).sub(perHead), ...parts });
}

/** Letting in and locking up belong to one day of the hall. Problem: "class-over-midnight". */
function overMidnight(slots: readonly Slot[], minutes: Comparison["minutes"]): readonly Problem[] {
  return slots.flatMap(({ start, said }, index) => {
    const within = start - minutes.setUp >= 0 && start + minutes.class + minutes.packDown <= 1440;
    const says = `With setting up and packing away the class on ${said} goes over midnight.`;
    const next = "Begin it at another time, or shorten it.";
    return within ? [] : [problem("class-over-midnight", `slots[${index}].start`, says, next)];
  });
}

/** Problem: "closure-backwards" is for closures; a span of the year the wrong way round is "span-backwards". */
function readSpan(span: { readonly from: string; readonly until: string }, place: string): Result<DateSpan> {
  const read = together({
    from: readDate(span.from, `${place}.from`),
    until: readDate(span.until, `${place}.until`),
  });
  if (!read.ok || Temporal.PlainDate.compare(read.value.from, read.value.until) <= 0)
    return tooLong(read, place);
  const says = `It ends on ${span.until}, before it begins on ${span.from}.`;
  return bad(problem("span-backwards", place, says, "Change one of the two dates."));
}

const MOST_DAYS = 1100;

function tooLong(read: Result<DateSpan>, place: string): Result<DateSpan> {
  if (!read.ok || read.value.from.until(read.value.until).days <= MOST_DAYS) return read;
  return bad(problem("span-too-long", place, "It is more than three years long.", "Give a year, or a term."));
}

function readHalls(
  halls: readonly ComparedHallDocument[],
  currency: CurrencyCode,
): Result<readonly ComparedHall[]> {
  if (halls.length === 0) {
    return bad(
      problem("halls-missing", "halls", "There are no halls to compare.", "Add the halls, two or more."),
    );
  }
  return togetherInOrder(halls.map((hall, index) => readHall(hall, currency, `halls[${index}]`)));
}

function readHall(hall: ComparedHallDocument, currency: CurrencyCode, place: string): Result<ComparedHall> {
  if (hall.currency !== undefined && hall.currency !== currency) {
    const says = `${hall.name} is hired in ${hall.currency.slice(0, 40)}, and the comparison is in ${currency}.`;
    const next = `Give its prices in ${currency}, or compare it with halls of its own country.`;
    return bad(problem("currencies-mixed", `${place}.currency`, says, next));
  }
  const read = together({
    ways: readWays(hall, place),
    hire: readHireTerms(hall.hire, currency, `${place}.hire`),
    travelMinutes: readMinutes(hall.travelMinutes, `${place}.travelMinutes`),
    travelCost: readAmount(hall.travelCost, currency, `${place}.travelCost`),
    free: readFree(hall.free, `${place}.free`),
    terms: readTerms(hall.terms, `${place}.terms`),
    closures: readClosedSpans(hall.closures, `${place}.closures`),
  });
  return read.ok ? good({ name: hall.name, ...read.value }) : read;
}

function readFree(free: ComparedHallDocument["free"], place: string): Result<readonly FreeSpan[] | null> {
  if (free === undefined) return good(null);
  return togetherInOrder(
    free.map(({ weekday, from, until }, index) => {
      const read = together({
        weekday: readWeekday(weekday, `${place}[${index}].weekday`),
        from: readClock(from, `${place}[${index}].from`),
        until: readClock(until, `${place}[${index}].until`),
      });
      const backwards = read.ok && read.value.from >= read.value.until;
      return backwards ? bad(backwardHours(from, until, `${place}[${index}]`)) : read;
    }),
  );
}

function readTerms(terms: ComparedHallDocument["terms"], place: string): Result<readonly DateSpan[] | null> {
  return terms === undefined
    ? good(null)
    : togetherInOrder(terms.map((it, index) => readSpan(it, `${place}[${index}]`)));
}
