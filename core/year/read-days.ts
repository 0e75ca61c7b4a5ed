import {
  bad,
  good,
  type Problem,
  problem,
  type Result,
  readDate,
  together,
  togetherInOrder,
} from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { DaysOff, ListContext, LostLine } from "./lists/day-list-types.ts";
import { readDayList } from "./lists/read-day-list.ts";
import type { DayListDocument } from "./year-document.ts";

export type LostAt = LostLine & { readonly place: string };
export type DaysRead = { readonly days: readonly DaysOff[]; readonly lost: readonly LostAt[] };

const LONGEST_LIST = 50_000;

/**
 * Days off as they were entered one by one and as a pasted list. A line that is not understood is no problem but is
 * kept to be told. Problems: "date-unreadable", "span-backwards", "list-too-long".
 */
export function readDays(list: DayListDocument, context: ListContext, place: string): Result<DaysRead> {
  if (list.text.length > LONGEST_LIST) return bad(tooLong(list.text.length, `${place}.text`));
  const entered = togetherInOrder(
    list.days.map((it, at) => readDaysOff(it, `${place}.days[${at}]`, context.called)),
  );
  if (!entered.ok) return entered;
  const { days, notUnderstood } = readDayList(list.text, context);
  return good({
    days: [...entered.value, ...days.map(({ from, until, why }) => ({ from, until, why }))],
    lost: notUnderstood.map((it) => ({ ...it, place: `${place}.text` })),
  });
}

type DaysOffDocument = DayListDocument["days"][number];

/** Problems: "date-unreadable", "span-backwards". Days without words are called `called`. */
export function readDaysOff(it: DaysOffDocument, place: string, called: string): Result<DaysOff> {
  const span = readSpan({ from: it.from, until: it.until ?? it.from }, place);
  if (!span.ok) return span;
  return good({ ...span.value, why: it.why.trim() === "" ? called : it.why.trim() });
}

/** Problems: "date-unreadable", "span-backwards". */
export function readSpan(
  { from, until }: { readonly from: string; readonly until: string },
  place: string,
): Result<DateSpan> {
  const dotted = place === "" ? "" : `${place}.`;
  const read = together({
    from: readDate(from, `${dotted}from`),
    until: readDate(until, `${dotted}until`),
  });
  if (!read.ok || Temporal.PlainDate.compare(read.value.from, read.value.until) <= 0) return read;
  const says = `It ends on ${until}, before it begins on ${from}.`;
  return bad(problem("span-backwards", `${dotted}until`, says, "Change one of the two dates."));
}

function tooLong(letters: number, place: string): Problem {
  const says = `The list has ${letters} letters.`;
  return problem(
    "list-too-long",
    place,
    says,
    `Keep it to ${LONGEST_LIST}: a line for each of the days off.`,
  );
}
