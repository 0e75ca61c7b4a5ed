import { readPlainTime } from "#kernels/calendar";
import {
  bad,
  type CurrencyCode,
  good,
  type Problem,
  problem,
  readMinutes,
  readMoney,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { placeUnknown } from "./read-ways.ts";
import { readWhole } from "./read-whole.ts";
import type { WeekCandidateDocument } from "./week-document.ts";
import type { Candidate, Place } from "./week-types.ts";

/** More than anybody could teach; it keeps the search within its measured time. */
const MOST = 200;

/**
 * What could be taught. Problems: "candidates-none", "candidates-too-many", "candidate-twice", "place-unknown",
 * "time-unreadable", "week-count", "across-midnight", "fixed-overlap" and those of minutes and money.
 */
export function readCandidates(
  documents: readonly WeekCandidateDocument[],
  places: readonly Place[],
  currency: CurrencyCode,
): Result<readonly Candidate[]> {
  if (documents.length === 0) {
    const next = "Add each class that could be taught, with its place and time.";
    return bad(problem("candidates-none", "candidates", "There is nothing that could be taught.", next));
  }
  if (documents.length > MOST) {
    const says = `${documents.length} candidates are too many for one week.`;
    return bad(problem("candidates-too-many", "candidates", says, `Keep the likeliest ${MOST} or fewer.`));
  }
  const read = togetherInOrder(documents.map((it, at) => readOne(it, `candidates[${at}]`, places, currency)));
  if (!read.ok) return read;
  const problems = [...twice(read.value), ...overlapping(read.value)];
  return problems.length > 0 ? bad(...problems) : read;
}

function readOne(
  document: WeekCandidateDocument,
  place: string,
  places: readonly Place[],
  currency: CurrencyCode,
): Result<Candidate> {
  const name = document.name ?? document.id;
  const at = places.findIndex(({ id }) => id === document.place);
  const read = together({
    place: at < 0 ? bad(placeUnknown(`${place}.place`, document.place)) : good(at),
    weekday: readWhole(document.weekday, `${place}.weekday`, "a weekday", 1, 7),
    start: readClock(document.start, `${place}.start`),
    before: readMinutes(document.minutes.before, `${place}.minutes.before`),
    teach: readMinutes(document.minutes.teach, `${place}.minutes.teach`, { least: 1, most: 1440 }),
    after: readMinutes(document.minutes.after, `${place}.minutes.after`),
    preparation: readMinutes(document.minutes.preparation, `${place}.minutes.preparation`),
    contribution: readContribution(document.contribution, currency, `${place}.contribution`),
    sessions: readWhole(document.sessions, `${place}.sessions`, "sessions a year", 1, 53),
  });
  if (!read.ok) return read;
  const { start, before, teach, after, weekday, preparation, contribution, sessions } = read.value;
  const times = { accessFrom: start - before, start, end: start + teach, accessUntil: start + teach + after };
  if (times.accessFrom < 0 || times.accessUntil > A_DAY) return bad(acrossMidnight(place, name));
  const { id, kind, fixed } = document;
  const base = { id, name, kind, place: read.value.place, weekday, preparation };
  return good({ ...base, ...times, contribution, sessions, fixed });
}

const A_DAY = 1440;

/** "18:30" as minutes since midnight. Problem: "time-unreadable". */
export function readClock(text: string, place: string): Result<number> {
  const time = readPlainTime(text);
  if (time !== undefined) return good(time.hour * 60 + time.minute);
  const says = `“${text.slice(0, 40)}” is not a time of day.`;
  return bad(problem("time-unreadable", place, says, "Write hours and minutes like 18:30."));
}

// a session that leaves a million is a slip of the pen; it also keeps a year's sum far below 2^53
const MOST_COINS = 100_000_000;

/** Below nought too: a class may cost more than it brings and still be promised. */
function readContribution(text: string, currency: CurrencyCode, place: string): ReturnType<typeof readMoney> {
  const read = readMoney(text, currency, place);
  if (!read.ok || Math.abs(read.value) <= MOST_COINS) return read;
  const says = `${text.trim()} is too much to be meant.`;
  return bad(problem("money-absurd", place, says, "Look at the figure again."));
}

function acrossMidnight(place: string, name: string): Problem {
  const says = `${name} reaches across midnight, with the time before and after it.`;
  return problem(
    "across-midnight",
    `${place}.start`,
    says,
    "Look at its start and minutes; a week plans days from midnight to midnight.",
  );
}

function twice(candidates: readonly Candidate[]): readonly Problem[] {
  const seen = new Set<string>();
  return candidates.flatMap(({ id }, at) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    const says = `Two candidates are called “${id.slice(0, 40)}”.`;
    return [problem("candidate-twice", `candidates[${at}].id`, says, "Give each an id of its own.")];
  });
}

function overlapping(candidates: readonly Candidate[]): readonly Problem[] {
  return candidates.flatMap((one, at) =>
    candidates.slice(0, at).flatMap((other) => {
      const together = one.weekday === other.weekday && one.fixed && other.fixed;
      if (!together || one.accessFrom >= other.accessUntil || other.accessFrom >= one.accessUntil) return [];
      const says = `${other.name} and ${one.name} are both promised, and they overlap.`;
      const next = "Let one of them go, or look at the times with what comes before and after.";
      return [problem("fixed-overlap", `candidates[${at}]`, says, next)];
    }),
  );
}
