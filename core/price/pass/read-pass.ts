import { bad, good, problem, type Result, readDate, together, togetherInOrder } from "#core/words";
import { Temporal } from "temporal-polyfill";
import { type LivePasses, readLivePasses } from "./read-live-passes.ts";
import type { PassDocument } from "./pass-document.ts";
import type { ClosedSpan, HoldersCalendar } from "./use-by-date.ts";

export type PassParts = {
  readonly given: number | null;
  readonly calendar: HoldersCalendar | null;
  readonly live: LivePasses | null;
};

/** What a pass document says besides the pass itself. */
export function readPassParts(document: PassDocument): Result<PassParts> {
  return together({
    given: readGiven(document.teachingWeeks),
    calendar: readCalendar(document.calendar),
    live: readLivePasses(document),
  });
}

function readGiven(weeks: number | undefined): Result<number | null> {
  if (weeks === undefined) return good(null);
  if (Number.isInteger(weeks) && weeks >= 1 && weeks <= 520) return good(weeks);
  const says = `A use-by of ${weeks} teaching weeks cannot be meant.`;
  return bad(problem("use-by-out-of-range", "teachingWeeks", says, "Give whole weeks from 1 to 520."));
}

function readCalendar(calendar: PassDocument["calendar"]): Result<HoldersCalendar | null> {
  if (calendar === undefined) return good(null);
  return together({
    from: readDate(calendar.from, "calendar.from"),
    weekday: readWeekday(calendar.weekday, "calendar.weekday"),
    closed: readClosedSpans(calendar.closures, "calendar.closures"),
  });
}

/** Problem: "weekday-unknown". */
export function readWeekday(weekday: number, place: string): Result<number> {
  if (Number.isInteger(weekday) && weekday >= 1 && weekday <= 7) return good(weekday);
  const says = `${weekday} is no day of the week.`;
  return bad(problem("weekday-unknown", place, says, "Give 1 for Monday to 7 for Sunday."));
}

type Closures = readonly { readonly from: string; readonly until: string; readonly why: string }[];

/** Problem besides those of a date: "closure-backwards". */
export function readClosedSpans(closures: Closures, place: string): Result<readonly ClosedSpan[]> {
  return togetherInOrder(
    closures.map(({ from, until, why }, index) => {
      const at = `${place}[${index}]`;
      const read = together({ from: readDate(from, `${at}.from`), until: readDate(until, `${at}.until`) });
      if (!read.ok) return read;
      if (Temporal.PlainDate.compare(read.value.from, read.value.until) <= 0)
        return good({ ...read.value, why });
      const says = `A closure ends on ${until}, before it begins on ${from}.`;
      return bad(problem("closure-backwards", at, says, "Change one of the two dates."));
    }),
  );
}
