import { weeklyDates } from "#kernels/calendar";
import {
  bad,
  type CurrencyCode,
  good,
  problem,
  readDate,
  readExact,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import type { Temporal } from "temporal-polyfill";
import type { YearMoneyDocument } from "./money-document.ts";
import type { PaidTerms, Passes, SessionCost, Work } from "./money-types.ts";
import { inOrder, readDay, readOne, readPaid, readSpread } from "./read-amounts.ts";

type WorkDocument = YearMoneyDocument["work"][number];

const ON_THE_DAY: PaidTerms = { when: "on-the-day", days: 0 };
// studios and gyms pay an invoice for a month in 30 to 60 days: common practice, no source
const AFTER_MONTH: PaidTerms = { when: "after-month", days: 30 };

const MOST_SESSIONS = 1100;

/**
 * One thing she teaches. Problems: "work-without-dates", "work-too-many-sessions", "weekday-unknown", "pass-share",
 * "pass-sessions" and those of amounts, bands, lags and dates.
 */
export function readWork(work: WorkDocument, currency: CurrencyCode, place: string): Result<Work> {
  const onTheDay = work.kind === "own" || work.kind === "workshop" || work.kind === "private";
  const read = together({
    dates: readDates(work, place),
    first: readSpread(work.perSession, currency, `${place}.perSession`),
    changes: readChanges(work, currency, place),
    passes: readPasses(work.passes, currency, `${place}.passes`),
    paid: readPaid(work.paid, onTheDay ? ON_THE_DAY : AFTER_MONTH, `${place}.paid`),
    costs: togetherInOrder(work.costs.map((cost, at) => readCost(cost, currency, `${place}.costs[${at}]`))),
  });
  if (!read.ok) return read;
  const { first, changes, ...rest } = read.value;
  const { id, kind, name = id } = work;
  return good({ ...rest, id, kind, name, brings: [{ from: "", spread: first }, ...changes] });
}

function readDates(work: WorkDocument, place: string): Result<readonly Temporal.PlainDate[]> {
  const { dates, weekly } = work;
  if (dates === undefined && weekly === undefined) {
    const says = `Nothing says when “${(work.name ?? work.id).slice(0, 40)}” is taught.`;
    return bad(
      problem(
        "work-without-dates",
        place,
        says,
        "Give its dates, or its weekday with a first and a last day.",
      ),
    );
  }
  const read =
    dates === undefined && weekly !== undefined
      ? readWeekly(weekly, `${place}.weekly`)
      : togetherInOrder((dates ?? []).map((date, at) => readDate(date, `${place}.dates[${at}]`)));
  if (!read.ok || read.value.length <= MOST_SESSIONS) return read.ok ? good(inOrder(read.value)) : read;
  const says = `“${(work.name ?? work.id).slice(0, 40)}” has ${read.value.length} sessions.`;
  return bad(
    problem(
      "work-too-many-sessions",
      place,
      says,
      `Give ${MOST_SESSIONS} at most: three years of every day.`,
    ),
  );
}

function readWeekly(
  { weekday, from, until, off }: NonNullable<WorkDocument["weekly"]>,
  place: string,
): Result<readonly Temporal.PlainDate[]> {
  const read = together({
    from: readDate(from, `${place}.from`),
    until: readDate(until, `${place}.until`),
    off: togetherInOrder(off.map((date, at) => readDay(date, `${place}.off[${at}]`))),
  });
  if (!read.ok) return read;
  if (!Number.isInteger(weekday) || weekday < 1 || weekday > 7) {
    const says = `${weekday} is no day of the week.`;
    return bad(problem("weekday-unknown", `${place}.weekday`, says, "Give 1 for Monday to 7 for Sunday."));
  }
  const days = read.value.from.until(read.value.until, { largestUnit: "days" }).days;
  if (days < 0 || days > 7 * MOST_SESSIONS) {
    const says = `From ${from} until ${until} there is no span to teach in.`;
    return bad(
      problem(
        "span-backwards",
        place,
        says,
        "Give a first day and a later last one, at most some years apart.",
      ),
    );
  }
  const closed = new Set(read.value.off);
  return good(
    weeklyDates(read.value.from, read.value.until, weekday).filter((date) => !closed.has(date.toString())),
  );
}

function readChanges(work: WorkDocument, currency: CurrencyCode, place: string): Result<Work["brings"]> {
  const read = togetherInOrder(
    work.changes.map((change, at) =>
      together({
        from: readDay(change.from, `${place}.changes[${at}].from`),
        spread: readSpread(change.perSession, currency, `${place}.changes[${at}].perSession`),
      }),
    ),
  );
  return read.ok ? good([...read.value].sort((one, other) => (one.from < other.from ? -1 : 1))) : read;
}

function readPasses(
  passes: WorkDocument["passes"],
  currency: CurrencyCode,
  place: string,
): Result<Passes | null> {
  if (passes === undefined) return good(null);
  const { share, sessions, owed } = passes;
  return together({
    share: readExact(
      share,
      `${place}.share`,
      { least: 0, most: 1 },
      {
        code: "pass-share",
        says: `${share} is no share of the takings.`,
        next: "Give a number from 0 to 1: 0.4 is four tenths.",
      },
    ),
    sessions: readSold(sessions, `${place}.sessions`),
    owed: readOne(owed, currency, `${place}.owed`),
  });
}

function readSold(sessions: number, place: string): Result<number> {
  if (Number.isInteger(sessions) && sessions >= 1 && sessions <= 100) return good(sessions);
  const says = `Passes for ${sessions} sessions at a time cannot be meant.`;
  return bad(problem("pass-sessions", place, says, "Give whole sessions from 1 to 100."));
}

function readCost(
  { name, perSession, paid, business }: WorkDocument["costs"][number],
  currency: CurrencyCode,
  place: string,
): Result<SessionCost> {
  return together({
    name: good(name),
    business: good(business),
    perSession: readOne(perSession, currency, `${place}.perSession`),
    paid: readPaid(paid, ON_THE_DAY, `${place}.paid`),
  });
}
