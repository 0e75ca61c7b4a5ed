import type { Writer } from "#core/words";
import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import { inZone } from "./instants.ts";

/**
 * What a hall keeps of the hire when a date is given up: all back 28 days before, half from 14, a quarter
 * from 0 is [{ daysBefore: 28, percentBack: 100 }, { daysBefore: 14, percentBack: 50 }, { daysBefore: 0,
 * percentBack: 25 }]. With less than the last of them nothing comes back.
 */
export type HallStep = { readonly daysBefore: number; readonly percentBack: number };

export type HallNoticeAsked = {
  readonly schedule: readonly HallStep[];
  readonly zone: string;
  readonly starts: string;
  /** when the hall would be told */
  readonly made: string;
  /** the hire of that date, in minor units */
  readonly hire: number;
  readonly currency: string;
};

export type HallNotice = {
  /** whole days of the calendar from the day the hall is told until the date, in the hall's zone */
  readonly daysBefore: number;
  readonly percentBack: number;
  readonly charged: number;
  readonly back: number;
  /** the last day on which it can be given up for nothing; null when the hall always keeps a part */
  readonly lastFreeDay: string | null;
  /** the next day on which it gets dearer, and what it costs then; null when it is as dear as it gets */
  readonly dearer: { readonly from: string; readonly charged: number } | null;
  readonly sentence: string;
};

/** What the hall charges if the date is given up now. A hall counts days, so any time of a day is that day. */
export function hallNotice(asked: HallNoticeAsked, writer: Writer): HallNotice {
  for (const step of asked.schedule) mustBeSound(step);
  const date = dayIn(asked.starts, asked.zone);
  const daysBefore = date - dayIn(asked.made, asked.zone);
  const percentBack = backAt(asked.schedule, daysBefore);
  const charged = chargedAt(asked, percentBack);
  const free = asked.schedule.filter((step) => step.percentBack === 100).map((step) => step.daysBefore);
  const found = {
    daysBefore,
    percentBack,
    charged,
    back: asked.hire - charged,
    lastFreeDay: free.length === 0 ? null : dateOfDay(date - Math.min(...free)),
    dearer: dearerAfter(asked, date, daysBefore, percentBack),
  };
  return { ...found, sentence: sentenceOf(asked, found, writer) };
}

function backAt(schedule: readonly HallStep[], daysBefore: number): number {
  const kept = schedule.filter((step) => step.daysBefore <= daysBefore);
  return kept.reduce((best, step) => (step.daysBefore > best.daysBefore ? step : best), NOTHING_BACK)
    .percentBack;
}

// below every step: with no notice at all, all of it is charged
const NOTHING_BACK: HallStep = { daysBefore: -1, percentBack: 0 };

/** Half a coin goes to the hall. */
function chargedAt({ hire }: HallNoticeAsked, percentBack: number): number {
  return Math.floor((2 * hire * (100 - percentBack) + 100) / 200);
}

function dearerAfter(asked: HallNoticeAsked, date: number, daysBefore: number, percentBack: number) {
  for (let days = daysBefore - 1; days >= 0; days -= 1) {
    const then = backAt(asked.schedule, days);
    if (then < percentBack) return { from: dateOfDay(date - days), charged: chargedAt(asked, then) };
  }
  return null;
}

function sentenceOf(
  { hire, currency, made, zone }: HallNoticeAsked,
  { daysBefore, charged, dearer }: Omit<HallNotice, "sentence">,
  writer: Writer,
): string {
  const told = writer.day(inZone(made, zone).toPlainDate().toString());
  const when = daysBefore === 1 ? "1 day before" : `${daysBefore} days before`;
  const cost = charged === 0 ? "nothing" : writer.money(charged, currency);
  const main = `Told on ${told}, ${when}, the hall charges ${cost} of ${writer.money(hire, currency)}.`;
  return dearer === null
    ? main
    : `${main} From ${writer.day(dearer.from)} it would be ${writer.money(dearer.charged, currency)}.`;
}

function dayIn(instant: string, zone: string): number {
  const day = dayNumberOf(inZone(instant, zone).toPlainDate().toString());
  if (day === undefined) throw new RangeError(`outside the calendar: ${instant}`);
  return day;
}

function mustBeSound({ daysBefore, percentBack }: HallStep): void {
  if (!Number.isInteger(daysBefore) || daysBefore < 0) throw new RangeError(`days before: ${daysBefore}`);
  if (!Number.isInteger(percentBack) || percentBack < 0 || percentBack > 100)
    throw new RangeError(`percent back: ${percentBack}`);
}
