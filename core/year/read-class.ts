import { bad, good, type Problem, problem, readDate, readMinutes, type Result, together } from "#core/words";
import { type DateSpan, readPlainTime, ruleStarts } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { ListContext } from "./lists/day-list-types.ts";
import { type LostAt, readDays } from "./read-days.ts";
import type { YearDocument } from "./year-document.ts";
import type { Repeats, YearClass, YearHall } from "./year-types.ts";

type ClassDocument = YearDocument["classes"][number];
type Read = { readonly class: YearClass; readonly lost: readonly LostAt[] };

export type ClassContext = {
  readonly halls: ReadonlyMap<string, YearHall>;
  readonly runs: YearDocument["runs"];
  readonly list: ListContext;
  readonly place: string;
};

/**
 * A class of the year in its hall. Problems: "hall-unknown", "time-unreadable", "class-weekday", "repeat-missing",
 * "repeat-twice", "rule-unreadable", "rule-too-often", "class-longer-than-a-day", those of dates, minutes and days off.
 */
export function readClass(it: ClassDocument, context: ClassContext): Result<Read> {
  const { place, list, halls } = context;
  const name = it.name ?? it.id;
  const hall = halls.get(it.hall);
  const read = together({
    hall: hall === undefined ? bad(hallUnknown(name, it.hall, `${place}.hall`)) : good(hall),
    start: readClock(it.start, `${place}.start`),
    minutes: readLength(it, place),
    repeats: readRepeats(it, place),
    span: readClassSpan(it, list, place),
    closed: readDays(it.closed, { ...list, called: "the class does not run" }, `${place}.closed`),
  });
  if (!read.ok) return read;
  const rests = context.runs.find((run) => run.class === it.id);
  const { closed, ...rest } = read.value;
  const found: YearClass = {
    id: it.id,
    name,
    ...rest,
    closed: closed.days,
    onPublicHolidays: rests?.publicHolidays ?? false,
    inSchoolHolidays: rests?.schoolHolidays ?? true,
  };
  const rule = ruleProblem(found, `${place}.rule`);
  return rule === null ? good({ class: found, lost: closed.lost }) : bad(rule);
}

/** Problem: "time-unreadable". */
export function readClock(text: string, place: string): Result<Temporal.PlainTime> {
  const time = readPlainTime(text);
  if (time !== undefined) return good(time);
  const says = `“${text.slice(0, 40)}” is not a time of day.`;
  return bad(problem("time-unreadable", place, says, "Write hours and minutes like 18:30."));
}

function readLength({ minutes, name, id }: ClassDocument, place: string): Result<YearClass["minutes"]> {
  const at = `${place}.minutes`;
  const read = together({
    before: readMinutes(minutes.before, `${at}.before`),
    teach: readMinutes(minutes.teach, `${at}.teach`, { least: 1, most: 1440 }),
    after: readMinutes(minutes.after, `${at}.after`),
  });
  if (!read.ok || read.value.before + read.value.teach + read.value.after <= 1440) return read;
  const says = `${name ?? id} takes more than a day with what stands before and after it.`;
  return bad(problem("class-longer-than-a-day", at, says, "Give the minutes of one session."));
}

function readRepeats({ weekday, rule, name, id }: ClassDocument, place: string): Result<Repeats> {
  if (weekday !== undefined && rule !== undefined) {
    const says = `${name ?? id} has a weekday and a rule, which may differ.`;
    return bad(problem("repeat-twice", `${place}.rule`, says, "Leave one of the two out."));
  }
  if (rule !== undefined) return good({ kind: "rule", rule: rule.replace(/^RRULE:/i, "").trim() });
  if (weekday === undefined) {
    const next = "Give a weekday, 1 is Monday, or a rule like FREQ=MONTHLY;BYDAY=1SA.";
    return bad(problem("repeat-missing", place, `${name ?? id} does not say when it repeats.`, next));
  }
  if (Number.isInteger(weekday) && weekday >= 1 && weekday <= 7) return good({ kind: "weekly", weekday });
  const next = "Give a day from 1, Monday, to 7, Sunday.";
  return bad(problem("class-weekday", `${place}.weekday`, `${weekday} is no day of the week.`, next));
}

/** From when until when it can be: a rule counts from its own first day, which may lie before the year. */
function readClassSpan({ from, until }: ClassDocument, year: DateSpan, place: string): Result<DateSpan> {
  const read = together({
    from: from === undefined ? good(year.from) : readDate(from, `${place}.from`),
    until: until === undefined ? good(year.until) : readDate(until, `${place}.until`),
  });
  if (!read.ok || Temporal.PlainDate.compare(read.value.from, read.value.until) <= 0) return read;
  const says = `It ends on ${String(read.value.until)}, before it begins on ${String(read.value.from)}.`;
  return bad(problem("span-backwards", `${place}.until`, says, "Change one of the two dates."));
}

/** Read once on trial, in a zone without changes, so that what follows need not fear the rule. */
function ruleProblem({ repeats, span, start, name }: YearClass, place: string): Problem | null {
  if (repeats.kind !== "rule") return null;
  const first = span.from.toPlainDateTime(start).toZonedDateTime("UTC");
  const read = ruleStarts({ rule: repeats.rule, start: first }, first, first.add({ years: 2 }));
  if (read.kind === "unreadable") {
    const next = "Write it as RFC 5545 does, like FREQ=WEEKLY;INTERVAL=2;BYDAY=TU, or give a weekday.";
    return problem("rule-unreadable", place, `The rule of ${name} cannot be read: ${read.why}.`, next);
  }
  const days = read.kind === "starts" ? read.starts.map((it) => it.toPlainDate().toString()) : [];
  if (read.kind === "starts" && new Set(days).size === days.length) return null;
  const says = `The rule of ${name} has it more than once a day.`;
  return problem("rule-too-often", place, says, "Write each time of the day as a class of its own.");
}

function hallUnknown(name: string, hall: string, place: string): Problem {
  const says = `${name} is in the hall “${hall.slice(0, 60)}”, which is not among the halls.`;
  return problem("hall-unknown", place, says, "Add the hall, or give the id of one that is there.");
}
