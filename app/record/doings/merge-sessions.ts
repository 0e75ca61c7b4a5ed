import { freeMats, goesBack, type Place, type SessionState, takesMat } from "#core/roll";
import { bad, good, problem, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { everybodyOff, moneyBack } from "../everybody-off.ts";
import { settlePlaces } from "../settle-places.ts";
import { idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";
import { placeAsked } from "./place-asked.ts";
import { sessionWords } from "./place-words.ts";

const ask = z
  .object({ kind: z.literal("merge sessions"), session: idSchema, into: idSchema })
  .describe(
    "Two thin sessions become one: who had a place in the one has it in the other, with what was paid.",
  );

export const mergeSessions = doing({
  ask,
  needs: ({ session, into }, known) => [
    `session/${session}`,
    `session/${into}`,
    ...(known.session(session)?.places ?? []).flatMap(({ person, pass }) => [
      `person/${person}` as const,
      ...(pass === null ? [] : [`pass/${pass}` as const]),
    ]),
  ],
  decide: ({ session: id, into }, desk) => {
    const from = sessionFound(desk, id);
    if (!from.ok) return from;
    const other = sessionFound(desk, into);
    if (!other.ok) return other;
    const found = mergeProblem(id, into, from.value, other.value, desk.made);
    return found === null ? merged(desk, id, into, from.value) : bad(found);
  },
});

function mergeProblem(id: string, into: string, from: SessionState, other: SessionState, now: string) {
  const open = [from, other].every(({ cancelled, closed }) => cancelled === null && !closed);
  if (id === into || !open || other.starts <= now) return cannotMerge();
  const coming = from.places.filter(takesMat);
  if (coming.some(({ person }) => other.places.some((it) => takesMat(it) && it.person === person)))
    return inBoth();
  return coming.length > freeMats(other) ? tooSmall(coming.length, freeMats(other)) : null;
}

/** The one is cancelled first, so that its passes are free for the other. */
function merged(desk: Desk, id: string, into: string, from: SessionState): Result<Told> {
  const coming = from.places.filter(takesMat);
  desk.tellSession(id, ...everybodyOff(from), ...moneyBack(from), {
    kind: "cancelled",
    why: "too few",
    movedTo: into,
  });
  settlePlaces(desk, id, from);
  for (const place of coming) {
    const carried = carry(desk, into, place);
    if (!carried.ok) return carried;
  }
  const target = desk.session(into) ?? from;
  return good({
    says: [
      `${sessionWords(from, desk.writer)} does not take place; ${coming.length} have their place in ${sessionWords(target, desk.writer)} instead, with what they paid. Tell them.`,
    ],
  });
}

function carry(desk: Desk, into: string, place: Place): Result<null> {
  const target = desk.session(into);
  if (target === undefined) throw new Error(`not read: ${into}`);
  const { person, how, pass } = place;
  const asked = placeAsked(desk, target, into, {
    place: `${place.id}.m`,
    person,
    how,
    pass,
    paid: goesBack(place),
  });
  if (!asked.ok) return asked;
  desk.tellSession(into, { kind: "held", ...asked.value, with: null, entry: null, walkedIn: false });
  settlePlaces(desk, into, target);
  return good(null);
}

function cannotMerge() {
  const says = "Two different sessions are needed that are both still to come.";
  return problem("merge-not-open", "into", says, "Choose another session to come together in.");
}

function inBoth() {
  const says = "Somebody has a place in both sessions.";
  return problem(
    "merge-in-both",
    "into",
    says,
    "Ask which of the two is wanted, give the other up, then do it again.",
  );
}

function tooSmall(coming: number, free: number) {
  const says = `${coming} have a place, and ${free} mats are free in the other session.`;
  return problem("moved-too-small", "into", says, "Choose another session, or cancel and offer other dates.");
}
