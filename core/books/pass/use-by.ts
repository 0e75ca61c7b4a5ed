import { bad, good, problem, type Result } from "#core/words";
import { dateOfDay, dayNumberOf, weekdayOfDay } from "#kernels/calendar";

/**
 * The last day of a pass, in teaching dates: the dates on which the holder could come, closed ones left out.
 *
 * Example: 15 teaching weeks from Tuesday 8 September with half-term out run until Tuesday 22 December.
 * Invariant: a closed session moves the use-by by one teaching date, and a pause by those missed in it.
 */
export type UseBy = {
  readonly date: string;
  /** dates beyond the last one known, which were taken to go on weekly: a guess until the year is planned */
  readonly guessed: number;
};

/** The T-th teaching date. Problem: "use-by-no-dates" when none is known at all. Method: trade F6. */
export function useByAfter(teachingDates: readonly string[], weeks: number): Result<UseBy> {
  if (!Number.isInteger(weeks) || weeks < 1) throw new RangeError(`teaching weeks: ${weeks}`);
  const dates = inOrder(teachingDates);
  const last = dates.at(-1);
  if (last === undefined) {
    const says = "No date is known on which the holder could come.";
    return bad(problem("use-by-no-dates", "teachingDates", says, "Plan the dates of the class first."));
  }
  const date = dates[weeks - 1];
  return good(date === undefined ? goOn(last, weeks - dates.length) : { date, guessed: 0 });
}

/** The use-by so many teaching dates later; where it falls between two, the next counts as one. */
export function moveUseBy(useBy: string, teachingDates: readonly string[], by: number): UseBy {
  if (!Number.isInteger(by) || by < 0) throw new RangeError(`moved by ${by}`);
  if (by === 0) return { date: useBy, guessed: 0 };
  const later = inOrder(teachingDates).filter((date) => date > useBy);
  const date = later[by - 1];
  return date === undefined ? goOn(later.at(-1) ?? useBy, by - later.length) : { date, guessed: 0 };
}

export type Pause = {
  readonly useBy: string;
  /** the first day of the pause, and the first day after it */
  readonly from: string;
  readonly on: string;
};

/**
 * The use-by after a pause: moved by the teaching dates in it, so that as many are left as when it began. A date
 * that was closed is no teaching date, and so counts once: for the closure or for the pause, never for both.
 */
export function useByAfterPause({ useBy, from, on }: Pause, teachingDates: readonly string[]): UseBy {
  const missed = inOrder(teachingDates).filter((date) => date >= from && date < on).length;
  return moveUseBy(useBy, teachingDates, missed);
}

/**
 * One date of each week, the last, for a pass that is good for several classes in a week: its weeks are counted,
 * not its dates. Weeks begin on Monday.
 */
export function lastOfEachWeek(teachingDates: readonly string[]): readonly string[] {
  const weeks = new Map<number, string>();
  for (const date of inOrder(teachingDates)) weeks.set(weekOf(date), date);
  return [...weeks.values()];
}

/** The number of a week that begins on Monday; the next week's is one more. */
export function weekOf(date: string): number {
  const day = dayOf(date);
  // 1 January 1970 was a Thursday, so that the first Monday after it was day 4
  return (day - weekdayOfDay(day) - 3) / 7;
}

function goOn(last: string, weeks: number): UseBy {
  return { date: dateOfDay(dayOf(last) + 7 * weeks), guessed: weeks };
}

function inOrder(dates: readonly string[]): readonly string[] {
  return [...new Set(dates)].sort();
}

function dayOf(date: string): number {
  const day = dayNumberOf(date);
  if (day === undefined) throw new RangeError(`not a date: ${date}`);
  return day;
}
