import { Temporal } from "temporal-polyfill";
import { countText, dayText, listText } from "./date-text.ts";
import { weekdayName } from "./lists/words-of-dates.ts";
import type { YearFound } from "./year-found.ts";
import {
  type ClassYearDates,
  type ReasonKind,
  reasonKinds,
  type Year,
  type YearClass,
} from "./year-types.ts";

/** The answer first: the weeks in which she teaches, then each class, then what is a guess. */
export function yearSentences(year: Year, found: YearFound): readonly string[] {
  const { span, locale } = year;
  const taught = found.weeks.filter(({ sessions }) => sessions > 0).length;
  const total = found.classes.reduce((sum, it) => sum + it.sessions.length, 0);
  const when = `From ${dayText(span.from, locale)} to ${dayText(span.until, locale)}`;
  return [
    `${when} you teach in ${taught} of ${countText(found.weeks.length, "week")}: ${countText(total, "session")} of ${countText(found.classes.length, "class", "classes")}.`,
    ...found.classes.map(classSentence),
    ...sickSentence(year.sick, total),
    ...longYearSentence(year),
  ];
}

/** 2026 is a year of 53 weeks by ISO 8601, and a weekday can be in a calendar year 53 times. */
function longYearSentence({ span }: Year): readonly string[] {
  const years = Array.from({ length: span.until.year - span.from.year + 1 }, (_, at) => span.from.year + at);
  const long = years.filter((year) => {
    const last = Temporal.PlainDate.from({ year, month: 12, day: 28 });
    const inside =
      Temporal.PlainDate.compare(span.from, last) <= 0 && Temporal.PlainDate.compare(last, span.until) <= 0;
    return inside && last.weekOfYear === 53;
  });
  return long.map((year) => `${year} has 53 weeks: a day of the week can come 53 times in it.`);
}

function classSentence({ class: one, sessions, lost, days }: ClassYearDates): string {
  const changed = sessions.filter(({ change }) => change !== null);
  const moved = changed.filter(({ change }) => change === "moved").length;
  const extra = changed.length - moved;
  const more = [
    ...(moved === 0 ? [] : [`${moved} moved`]),
    ...(extra === 0 ? [] : [`${extra} added or held all the same`]),
  ];
  const beside = more.length === 0 ? "" : ` (${listText(more)})`;
  const of = `${countText(sessions.length, "session")}${beside}, of ${days} ${daysWords(one)}`;
  return lost.length === 0
    ? `${one.name}: ${of}; nothing takes one.`
    : `${one.name}: ${of}; ${lost.length === 1 ? "1 falls" : `${lost.length} fall`} out: ${lostWords(lost)}.`;
}

function daysWords(one: YearClass): string {
  return one.repeats.kind === "weekly" ? `${weekdayName(one.repeats.weekday)}s` : "dates of its rule";
}

const kindWords: Readonly<Record<ReasonKind, string>> = {
  cancelled: "cancelled by you",
  "public holiday": "on public holidays",
  "time off": "in your time off",
  "class closed": "when the class does not run",
  "hall closed": "when the hall is closed",
  election: "on election days",
  "hall booked": "when others have the hall",
  "school holiday": "in school holidays",
};

/** "6 when the hall is closed and 2 on public holidays": each date by the weightiest of what takes it. */
function lostWords(lost: ClassYearDates["lost"]): string {
  const counts = reasonKinds.map((kind) => ({
    kind,
    count: lost.filter(({ reasons }) => reasons[0]?.kind === kind).length,
  }));
  return listText(
    counts.filter(({ count }) => count > 0).map(({ kind, count }) => `${count} ${kindWords[kind]}`),
  );
}

function sickSentence(share: number, total: number): readonly string[] {
  if (share === 0 || total === 0) return [];
  const percent = Math.round(share * 1000) / 10;
  const lost = Math.round(share * total * 10) / 10;
  return [
    `Being ill may take ${lost} of the ${countText(total, "session")} more: a guess of ${percent} %, on no date and taken off nothing above.`,
  ];
}
