import { dayNumberOf, weekdayOfDay } from "#kernels/calendar";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { ClosedDays, PersonSeen, Records, Visit } from "./coming-types.ts";
import { calendarWeek, type DaySpan, type TeachingTime, teachingTime } from "./teaching-time.ts";

/** People with their days until the end, and the time that runs in teaching weeks. */
export type RecordsRead = {
  readonly people: readonly PersonSeen[];
  readonly until: number;
  readonly time: TeachingTime;
  /** the last week that counts: it has ended, or somebody came in it */
  readonly lastWeek: number;
  readonly visits: number;
  readonly visitsLater: number;
  /** the Mondays of weeks in which nobody came and the class is taken to have run */
  readonly emptyWeeks: readonly number[];
};

/**
 * Problems: "date-unreadable" at the visit, the closure or the end, "closure-backwards", "visits-none" when nobody
 * was seen until the end.
 */
export function readRecords(records: Records): Result<RecordsRead> {
  const { visits, closed = [], until } = records;
  const days = visits.map(({ date }) => dayNumberOf(date));
  const problems = [
    ...visits.flatMap(({ date }, at) =>
      days[at] === undefined ? [unreadable(`visits[${at}].date`, date)] : [],
    ),
    ...closed.flatMap(closureProblems),
    ...(until !== undefined && dayNumberOf(until) === undefined ? [unreadable("until", until)] : []),
  ];
  if (problems.length > 0) return bad(...problems);
  const last = days.reduce<number>(
    (latest, day) => Math.max(latest, day ?? latest),
    Number.NEGATIVE_INFINITY,
  );
  const end = (until === undefined ? undefined : dayNumberOf(until)) ?? last;
  const people = peopleUntil(visits, days, end);
  if (people.length === 0) return bad(nobody(visits.length));
  const spans = closed.map((span) => ({
    from: dayNumberOf(span.from) ?? 0,
    until: dayNumberOf(span.until) ?? 0,
  }));
  return good({
    people,
    until: end,
    ...timeOf(people, end, spans, records.emptyWeeksClosed === true),
    visits: people.reduce((sum, it) => sum + it.days.length, 0),
    visitsLater: days.filter((day) => (day ?? end) > end).length,
  });
}

/** Each person's days once, in their order; people in the order of their first row. */
function peopleUntil(
  visits: readonly Visit[],
  days: readonly (number | undefined)[],
  until: number,
): readonly PersonSeen[] {
  const people = new Map<string, Set<number>>();
  for (const [at, { person }] of visits.entries()) {
    const day = days[at];
    if (day === undefined || day > until) continue;
    const seen = people.get(person);
    if (seen === undefined) people.set(person, new Set([day]));
    else seen.add(day);
  }
  return [...people].map(([person, seen]) => ({ person, days: [...seen].sort((a, b) => a - b) }));
}

function timeOf(
  people: readonly PersonSeen[],
  until: number,
  closed: readonly DaySpan[],
  emptyWeeksClosed: boolean,
): Pick<RecordsRead, "time" | "lastWeek" | "emptyWeeks"> {
  const seen = new Set(people.flatMap(({ days }) => days));
  const first = [...seen].reduce((earliest, day) => Math.min(earliest, day), until);
  const time = teachingTime(seen, closed, emptyWeeksClosed ? { from: first, until } : null);
  const ran = new Set([...seen].map(calendarWeek));
  const complete = weekdayOfDay(until) === 7 || ran.has(calendarWeek(until));
  const mondays = mondaysBetween(first, complete ? until : until - 7);
  const emptyWeeks = mondays.filter(
    (day) => !ran.has(calendarWeek(day)) && time.weekOf(day) < time.weekOf(day + 7),
  );
  // the week before, where the last is neither over nor was anybody seen in it
  return { time, lastWeek: complete ? time.weekOf(until + 7) - 1 : time.weekOf(until) - 1, emptyWeeks };
}

function mondaysBetween(from: number, until: number): readonly number[] {
  const first = calendarWeek(from);
  const count = Math.max(0, calendarWeek(until) - first + 1);
  return Array.from({ length: count }, (_, index) => (first + index) * 7 - 3);
}

function closureProblems({ from, until }: ClosedDays, at: number): readonly Problem[] {
  const days = [from, until].map(dayNumberOf);
  const [first, last] = days;
  if (first === undefined) return [unreadable(`closed[${at}].from`, from)];
  if (last === undefined) return [unreadable(`closed[${at}].until`, until)];
  if (first <= last) return [];
  const says = `The closure from ${from} until ${until} ends before it begins.`;
  return [problem("closure-backwards", `closed[${at}]`, says, "Exchange the two dates.")];
}

function unreadable(place: string, text: string): Problem {
  const says = `“${text.slice(0, 40)}” is not a date of the calendar.`;
  return problem("date-unreadable", place, says, "Write year, month and day like 2027-02-28.");
}

function nobody(later: number): Problem {
  const says = later === 0 ? "There is no visit by anybody." : "Nobody was seen until that day.";
  return problem(
    "visits-none",
    "visits",
    says,
    "Give at least one person with a date, and a day that is not before it.",
  );
}
