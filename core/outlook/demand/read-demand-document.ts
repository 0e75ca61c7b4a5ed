import { bad, good, problem, type Result, together, togetherInOrder } from "#core/words";
import type { DatelessSession } from "../happened/held-session.ts";
import { readSessions, tooManyHeads } from "../happened/read-sessions.ts";
import { readCount } from "../read-count.ts";
import type { DemandDocument } from "./demand-document.ts";

/**
 * Problems: "heads-missing", "capacity-unknown", "lists-differ", "heads-over-capacity", those of counts and of
 * dated sessions.
 */
export function readDemandDocument(document: DemandDocument): Result<readonly DatelessSession[]> {
  const { sessions, heads, capacity } = document;
  if (sessions !== undefined && sessions.length > 0) {
    const held = readSessions({ sessions, ...(capacity === undefined ? {} : { capacity }) });
    return held.ok && held.value.length === 0 ? bad(noHeads()) : held;
  }
  if (heads === undefined || heads.length === 0) return bad(noHeads());
  if (capacity === undefined) return bad(noPlaces());
  return readLists(document, heads, capacity);
}

function readLists(
  { turnedAway = [], waiting = [] }: DemandDocument,
  heads: readonly number[],
  capacity: number,
): Result<readonly DatelessSession[]> {
  const read = together({
    capacity: readCount(capacity, "capacity", "places", { least: 1, most: 1000 }),
    turnedAwayLength: readLength(turnedAway, heads.length, "turnedAway"),
    waitingLength: readLength(waiting, heads.length, "waiting"),
    heads: readHeads(heads),
  });
  if (!read.ok) return read;
  const places = read.value.capacity;
  return togetherInOrder(
    read.value.heads.map((count, at): Result<DatelessSession> => {
      if (count > places) return bad(tooManyHeads(count, places, `heads[${at}]`));
      return together({
        heads: good(count),
        capacity: good(places),
        turnedAway: readPeople(turnedAway[at], `turnedAway[${at}]`),
        waiting: readPeople(waiting[at], `waiting[${at}]`),
      });
    }),
  );
}

function readHeads(heads: readonly number[]): Result<readonly number[]> {
  if (heads.length > 520) return bad(tooLong(heads.length));
  return togetherInOrder(
    heads.map((count, at) => readCount(count, `heads[${at}]`, "people on mats", { least: 0, most: 1000 })),
  );
}

function readPeople(value: number | null | undefined, place: string): Result<number | null> {
  if (value === undefined || value === null) return good(null);
  return readCount(value, place, "people", { least: 0, most: 1000 });
}

function readLength(list: readonly unknown[], sessions: number, place: string): Result<null> {
  if (list.length === 0 || list.length === sessions) return good(null);
  const says = `There are ${sessions} sessions and ${list.length} values here.`;
  return bad(problem("lists-differ", place, says, "Give one value a session, null where nobody counted."));
}

function noHeads() {
  const says = "There is no session to learn from.";
  return problem("heads-missing", "heads", says, "Give the people on mats, session by session.");
}

function noPlaces() {
  const says = "How many places there are is not known.";
  return problem("capacity-unknown", "capacity", says, "Give the places on an ordinary evening.");
}

function tooLong(count: number) {
  const says = `${count} sessions are more than ten years of a class.`;
  return problem("sessions-too-many", "heads", says, "Give the latest 520; they tell the most.");
}
