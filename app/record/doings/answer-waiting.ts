import { acceptOffer, leaveWaiting, notWaiting, type SessionState, settleOffers } from "#core/roll";
import { bad, good, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { letGoFilled, passesOfLate } from "../let-go-filled.ts";
import { settlePlaces } from "../settle-places.ts";
import { howSchema, idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";
import { placeAsked } from "./place-asked.ts";
import { sessionWords, untilSentence } from "./place-words.ts";

const accept = howSchema
  .extend({ kind: z.literal("take offer"), session: idSchema, entry: idSchema })
  .describe("Somebody on the waiting list takes the place that was offered.");

export const takeOffer = doing({
  ask: accept,
  needs: ({ session, entry, pass }, known) => [
    `session/${session}`,
    ...(pass === null ? [] : [`pass/${pass}` as const]),
    ...passesOfLate(known.session(session)),
    ...waitingPerson(known.session(session), entry).map((person) => `person/${person}` as const),
  ],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    return session.ok ? accepted(desk, asked, session.value) : session;
  },
});

function waitingPerson(session: SessionState | undefined, entry: string): readonly string[] {
  return (session?.waiting ?? []).filter((it) => it.entry === entry).map(({ person }) => person);
}

/** The offer is looked at before the list is settled: at the very end of its time it still counts. */
function accepted(desk: Desk, asked: z.output<typeof accept>, session: SessionState): Result<Told> {
  const [person] = waitingPerson(session, asked.entry);
  if (person === undefined) return bad(notWaiting());
  const place = placeAsked(desk, session, asked.session, { ...asked, place: asked.entry, person });
  if (!place.ok) return place;
  const events = acceptOffer(session, asked.entry, place.value, desk.made);
  if (!events.ok) return events;
  desk.tellSession(asked.session, ...events.value);
  settlePlaces(desk, asked.session, session);
  letGoFilled(desk, asked.session);
  const { writer } = desk;
  return good({
    outcome: "held",
    says: [`A place in ${sessionWords(session, writer)}. ${untilSentence(session, desk)}`],
  });
}

const leave = z
  .object({ kind: z.literal("leave waiting list"), session: idSchema, entry: idSchema })
  .describe("Somebody does not want to wait, or does not take the place that was offered.");

export const leaveList = doing({
  ask: leave,
  needs: ({ session }) => [`session/${session}`],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    const events = leaveWaiting(session.value, asked.entry);
    if (!events.ok) return events;
    desk.tellSession(asked.session, ...events.value);
    const left = desk.session(asked.session) ?? session.value;
    desk.tellSession(asked.session, ...settleOffers(left, desk.made));
    return good({
      says: [`Off the ${desk.writer.word("waiting list")} of ${sessionWords(session.value, desk.writer)}.`],
    });
  },
});

const settle = z
  .object({ kind: z.literal("settle waiting list"), session: idSchema })
  .describe("Offers that nobody answered go on to the next; doing it again changes nothing.");

export const settleList = doing({
  ask: settle,
  needs: ({ session }) => [`session/${session}`],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    const events = settleOffers(session.value, desk.made);
    desk.tellSession(asked.session, ...events);
    const offers = events.filter(({ kind }) => kind === "offered").length;
    return good({ says: [offers === 0 ? "Nobody is to be asked now." : `${offers} offered a place.`] });
  },
});
