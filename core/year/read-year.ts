import {
  bad,
  good,
  type Problem,
  problem,
  readDate,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { type DateSpan, isZone } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { PublicHoliday } from "./holidays/public-holiday.ts";
import { publicHolidays } from "./holidays/public-holidays.ts";
import type { ListContext } from "./lists/day-list-types.ts";
import { classUnknown, readChanges } from "./read-changes.ts";
import { readClass } from "./read-class.ts";
import { readDays, readDaysOff, readSpan } from "./read-days.ts";
import { readHall, zoneUnknown } from "./read-halls.ts";
import type { YearDocument } from "./year-document.ts";
import type { Year } from "./year-types.ts";

/**
 * A year document as sound values. Problems: "zone-unknown", "year-too-long", "id-twice", "too-many-classes",
 * "share-out-of-range" and those of its halls, classes, lists and changes; all of them at once as far as they can be
 * looked at.
 */
export function readYear(document: YearDocument): Result<Year> {
  const span = readYearSpan(document);
  if (!span.ok) return span;
  if (!isZone(document.zone)) return bad(zoneUnknown(document.zone, "zone"));
  const shape = shapeProblems(document);
  if (shape.length > 0) return bad(...shape);
  const list = (called: string): ListContext => ({ ...span.value, locale: document.locale, called });
  const days = together({
    holidays: readHolidays(document.holidays, span.value),
    school: readDays(document.school, list("school holidays"), "school"),
    timeOff: readDays(document.timeOff, list("time off"), "timeOff"),
    elections: togetherInOrder(document.elections.map((it, at) => readDate(it, `elections[${at}]`))),
  });
  const halls = togetherInOrder(
    document.halls.map((it, at) => readHall(it, document.zone, list(""), `halls[${at}]`)),
  );
  if (!halls.ok) return days.ok ? halls : bad(...days.problems, ...halls.problems);
  const places = new Map(halls.value.map(({ hall }) => [hall.id, hall]));
  const classes = togetherInOrder(
    document.classes.map((it, at) =>
      readClass(it, { halls: places, runs: document.runs, list: list(""), place: `classes[${at}]` }),
    ),
  );
  const read = together({ days, classes, changes: readChanges(document.changes, document.classes) });
  if (!read.ok) return read;
  const { school, timeOff, ...rest } = read.value.days;
  const lost = [school, timeOff, ...halls.value, ...read.value.classes].flatMap((it) => it.lost);
  return good({
    span: span.value,
    zone: document.zone,
    locale: document.locale,
    region: document.holidays.region,
    ...rest,
    school: school.days,
    timeOff: timeOff.days,
    sick: document.sick.share,
    halls: halls.value.map(({ hall }) => hall),
    classes: read.value.classes.map((it) => it.class),
    changes: read.value.changes,
    edition: Math.max(0, Math.round(document.edition)),
    notUnderstood: lost,
  });
}

const MOST_MONTHS = 24;

function readYearSpan(document: Pick<YearDocument, "from" | "until">): Result<DateSpan> {
  const read = readSpan(document, "");
  if (!read.ok) return read;
  const { from, until } = read.value;
  if (Temporal.PlainDate.compare(until, from.add({ months: MOST_MONTHS })) < 0) return read;
  const says = `From ${document.from} until ${document.until} is more than two years.`;
  return bad(problem("year-too-long", "until", says, "Plan a year or two at a time."));
}

const MOST_CLASSES = 100;

function shapeProblems(document: YearDocument): readonly Problem[] {
  const { halls, classes, sick, runs } = document;
  const share = sick.share;
  const known = new Set(classes.map(({ id }) => id));
  return [
    ...repeated(halls, "halls"),
    ...repeated(classes, "classes"),
    ...(classes.length <= MOST_CLASSES ? [] : [tooMany(classes.length)]),
    ...(share >= 0 && share <= 1 ? [] : [shareProblem(share)]),
    ...runs.flatMap((it, at) => (known.has(it.class) ? [] : [classUnknown(it.class, `runs[${at}].class`)])),
  ];
}

function repeated(listed: readonly { readonly id: string }[], place: string): readonly Problem[] {
  return listed.flatMap(({ id }, at) => {
    if (listed.findIndex((it) => it.id === id) === at) return [];
    const says = `The id “${id.slice(0, 60)}” is there twice.`;
    return [problem("id-twice", `${place}[${at}].id`, says, "Give each its own.")];
  });
}

function tooMany(count: number): Problem {
  const says = `${count} classes are more than one teacher can have.`;
  return problem("too-many-classes", "classes", says, `Keep it to ${MOST_CLASSES}.`);
}

function shareProblem(share: number): Problem {
  const says = `${share} of the sessions cannot be lost by being ill.`;
  return problem("share-out-of-range", "sick.share", says, "Give a share from 0 to 1, like 0.03.");
}

function readHolidays(
  { region, also, not }: YearDocument["holidays"],
  { from, until }: DateSpan,
): Result<readonly PublicHoliday[]> {
  const read = together({
    also: togetherInOrder(also.map((it, at) => readDaysOff(it, `holidays.also[${at}]`, "public holiday"))),
    not: togetherInOrder(not.map((it, at) => readDate(it, `holidays.not[${at}]`))),
  });
  if (!read.ok) return read;
  const left = new Set(read.value.not.map(String));
  const added = read.value.also.flatMap((it) => eachDay(it).map((date) => ({ date, name: it.why })));
  const all = [...publicHolidays(region, from, until), ...added].filter(
    ({ date }) => !left.has(date.toString()),
  );
  return good(all.toSorted((a, b) => Temporal.PlainDate.compare(a.date, b.date)));
}

function eachDay({ from, until }: DateSpan): readonly Temporal.PlainDate[] {
  const days = Math.min(from.until(until).days, 366);
  return Array.from({ length: days + 1 }, (_, at) => from.add({ days: at }));
}
