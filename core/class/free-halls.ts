import { clockText } from "#core/price";
import type { CurrencyCode } from "#core/words";
import { readPlainTime, spanCovering, weeklyDates } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import type { ClassDocument } from "./class-document.ts";
import type { HallForClass } from "./planning-document.ts";
import { readClassYear } from "./read-class-year.ts";

/** A time of the week, in minutes of its day: Tuesday from 1080 to 1170 is 18:00 to 19:30. */
export type HallWindow = { readonly weekday: number; readonly from: number; readonly until: number };

/** Whether a hall can be had then, by what she has written down of it. */
export type FreeHall =
  | { readonly id: string; readonly kind: "free"; readonly dates: number | null; readonly of: number | null }
  | { readonly id: string; readonly kind: "not stated" }
  /** "on that day it is free from 09:00 to 12:00", or "never on that day" */
  | { readonly id: string; readonly kind: "taken"; readonly instead: string };

/**
 * Which halls are free at a time of the week, by their free hours; and on how many of the year's dates, by their
 * terms and closures and the days without class. Dates are null while the year is unsound.
 */
export function freeHalls(
  { planning, year }: Pick<ClassDocument, "planning" | "year">,
  ids: readonly string[],
  window: HallWindow,
  currency: CurrencyCode,
): readonly FreeHall[] {
  const read = readClassYear(year, currency);
  const all = read.ok ? weeklyDates(read.value.year.from, read.value.year.until, window.weekday) : null;
  const closures = read.ok ? read.value.closures : [];
  const taught = all?.filter((date) => spanCovering(closures, date) === undefined) ?? null;
  return ids.map((id): FreeHall => {
    const hall = planning?.halls?.[id] ?? {};
    if (hall.free === undefined || hall.free.length === 0) return { id, kind: "not stated" };
    const instead = insteadOf(hall.free, window);
    if (instead !== null) return { id, kind: "taken", instead };
    const dates = taught === null ? null : taught.filter((date) => canBeHad(hall, date)).length;
    return { id, kind: "free", dates, of: all?.length ?? null };
  });
}

type Free = NonNullable<HallForClass["free"]>;

/** Null when one free span holds the whole window: two that only meet may have another group's door between them. */
function insteadOf(free: Free, { weekday, from, until }: HallWindow): string | null {
  const spans = free
    .filter((span) => span.weekday === weekday)
    .map((span) => ({ from: minutesOf(span.from), until: minutesOf(span.until) }))
    .filter((span) => span.from < span.until)
    .toSorted((a, b) => a.from - b.from);
  if (spans.some((span) => span.from <= from && span.until >= until)) return null;
  if (spans.length === 0) return "never on that day";
  return `only ${spans.map((span) => `${clockText(span.from)} to ${clockText(span.until)}`).join(" and ")}`;
}

/** A time that cannot be read is no time, and its span falls away. */
function minutesOf(text: string): number {
  const time = readPlainTime(text);
  return time === undefined ? Number.NaN : time.hour * 60 + time.minute;
}

/** Spans of ISO dates, which stand in the order of their letters. */
function canBeHad({ terms = [], closures = [] }: HallForClass, date: Temporal.PlainDate): boolean {
  const day = date.toString();
  const holds = (span: { readonly from: string; readonly until: string }) =>
    span.from <= day && day <= span.until;
  return (terms.length === 0 || terms.some(holds)) && !closures.some(holds);
}
