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
import { Temporal } from "temporal-polyfill";
import { readCount } from "../read-count.ts";
import type { HappenedDocument, HappenedSessionDocument } from "./happened-document.ts";
import type { HeldSession } from "./held-session.ts";

/**
 * The sessions that took place, in the order of their dates whatever the order they were written in; those that were
 * cancelled are left out. Problems: "date-unreadable", "count-out-of-range", "count-not-whole",
 * "capacity-unknown", "heads-over-capacity", "newcomers-over-heads", "session-twice", "sessions-too-many".
 */
export function readSessions(
  { sessions, capacity }: Pick<HappenedDocument, "sessions" | "capacity">,
  place = "",
): Result<readonly HeldSession[]> {
  const at = (field: string): string => (place === "" ? field : `${place}.${field}`);
  if (sessions.length > MOST_SESSIONS) return bad(tooMany(sessions.length, at("sessions")));
  const usual = capacity === undefined ? good(null) : readPlaces(capacity, at("capacity"));
  if (!usual.ok) return usual;
  const read = togetherInOrder(
    sessions.map((it, index) => readSession(it, usual.value, at(`sessions[${index}]`))),
  );
  if (!read.ok) return read;
  const twice = sessions.flatMap(({ date }, index) =>
    sessions.findIndex((it) => it.date === date) < index ? [toldTwice(date, at(`sessions[${index}]`))] : [],
  );
  if (twice.length > 0) return bad(...twice);
  return good(
    read.value
      .filter((it) => it !== null)
      .toSorted((one, other) => Temporal.PlainDate.compare(one.date, other.date)),
  );
}

// Ten years of a class every week; more is the register of several classes.
const MOST_SESSIONS = 520;

function readSession(
  it: HappenedSessionDocument,
  usual: number | null,
  place: string,
): Result<HeldSession | null> {
  const read = together({
    date: readDate(it.date, `${place}.date`),
    heads: readCount(it.heads, `${place}.heads`, "people on mats", { least: 0, most: 1000 }),
    capacity: it.capacity === undefined ? good(usual) : readPlaces(it.capacity, `${place}.capacity`),
    turnedAway: readPeople(it.turnedAway, `${place}.turnedAway`),
    waiting: readPeople(it.waiting, `${place}.waiting`),
    newcomers: readPeople(it.newcomers, `${place}.newcomers`),
  });
  if (!read.ok) return read;
  if (it.cancelled === true) return good(null);
  const { capacity, heads, newcomers } = read.value;
  if (capacity === null) return bad(noCapacity(place));
  const problems = [
    ...(heads > capacity ? [tooManyHeads(heads, capacity, `${place}.heads`)] : []),
    ...(newcomers !== null && newcomers > heads ? [moreNew(newcomers, heads, `${place}.newcomers`)] : []),
  ];
  return problems.length > 0 ? bad(...problems) : good({ ...read.value, capacity });
}

function readPlaces(value: number, place: string): Result<number> {
  return readCount(value, place, "places", { least: 1, most: 1000 });
}

function readPeople(value: number | undefined, place: string): Result<number | null> {
  return value === undefined ? good(null) : readCount(value, place, "people", { least: 0, most: 1000 });
}

function noCapacity(place: string): Problem {
  const says = "How many places there were is not known, so a full evening cannot be told from another.";
  return problem("capacity-unknown", `${place}.capacity`, says, "Give the places, here or for all sessions.");
}

export function tooManyHeads(heads: number, capacity: number, place: string): Problem {
  const says = `${heads} people were on ${capacity} places.`;
  const next = "Give the places that there really were that evening, or look at the number again.";
  return problem("heads-over-capacity", place, says, next);
}

function moreNew(newcomers: number, heads: number, place: string): Problem {
  const says = `${newcomers} of ${heads} people were there for the first time.`;
  return problem("newcomers-over-heads", place, says, "Look at the numbers again.");
}

function toldTwice(date: string, place: string): Problem {
  const next = "Keep one of them; a second class on that day has a record of its own.";
  return problem("session-twice", place, `${date} is there twice.`, next);
}

function tooMany(count: number, place: string): Problem {
  const next = `Give the sessions of one class, ${MOST_SESSIONS} at most; the latest tell the most.`;
  return problem("sessions-too-many", place, `${count} sessions are more than ten years of a class.`, next);
}
