import { bad, good, problem, type Result } from "#core/words";
import { type DateSpan, spanCovering, weeklyRecurrence } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";

/** A span in which the holder cannot come: the hall is closed, the teacher is away, the pass is paused. */
export type ClosedSpan = DateSpan & { readonly why: string };

export type HoldersCalendar = {
  /** the first day on which the pass counts */
  readonly from: Temporal.PlainDate;
  /** 1 is Monday: the day of the class that the holder comes to */
  readonly weekday: number;
  readonly closed: readonly ClosedSpan[];
};

export type UseByDate = {
  /** the last session on which the pass is good */
  readonly date: Temporal.PlainDate;
  /** where it would be if nothing were closed */
  readonly withoutClosures: Temporal.PlainDate;
  readonly lost: readonly { readonly date: Temporal.PlainDate; readonly why: string }[];
};

// A hall shut for ten years together is not a closure.
const MOST_LOST = 520;

/**
 * The use-by as a date: the session that is the T-th the holder could attend, so that each closed date moves it
 * to the next. Problem: "use-by-out-of-sight".
 */
export function useByDate(calendar: HoldersCalendar, teachingWeeks: number): Result<UseByDate> {
  if (!Number.isInteger(teachingWeeks) || teachingWeeks < 1) throw new RangeError(`weeks: ${teachingWeeks}`);
  let lost: UseByDate["lost"] = [];
  // each closed date is one more to look at; ends as soon as looking further finds no more of them closed
  for (;;) {
    const dates = datesOf(calendar, teachingWeeks + lost.length);
    const found = lostOf(calendar, dates);
    const [date, withoutClosures] = [dates.at(-1), dates[teachingWeeks - 1]];
    if (date === undefined || withoutClosures === undefined)
      throw new RangeError(`no dates: ${dates.length}`);
    if (found.length === lost.length) return good({ date, withoutClosures, lost });
    if (found.length > MOST_LOST) return outOfSight(found.length);
    lost = found;
  }
}

function datesOf({ from, weekday }: HoldersCalendar, count: number): readonly Temporal.PlainDate[] {
  return weeklyRecurrence({ start: from, interval: 1, weekdays: [weekday], weekStart: 1, end: { count } });
}

function lostOf({ closed }: HoldersCalendar, dates: readonly Temporal.PlainDate[]): UseByDate["lost"] {
  return dates.flatMap((date) => {
    const span = spanCovering(closed, date);
    return span === undefined ? [] : [{ date, why: span.why }];
  });
}

function outOfSight(count: number): Result<never> {
  const says = `More than ${count - 1} dates together are closed, so the pass would never come to its end.`;
  return bad(
    problem("use-by-out-of-sight", "calendar.closures", says, "Look at the dates of the closures again."),
  );
}
