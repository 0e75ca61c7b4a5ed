import { holdPlaces, type SessionState, settleOffers } from "#core/roll";
import { good, type Result, togetherInOrder } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { settlePlaces } from "../settle-places.ts";
import { howSchema, idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";
import { placeAsked } from "./place-asked.ts";
import { untilSentence } from "./place-words.ts";

const ask = z
  .object({
    kind: z.literal("take place"),
    session: idSchema,
    people: z
      .array(howSchema.extend({ place: idSchema, person: idSchema }))
      .min(1)
      .max(2)
      .describe("two come together: both have a place or both wait"),
  })
  .describe("Somebody, or two together, take a place or go on the waiting list.");

export const takePlace = doing({
  ask,
  needs: ({ session, people }) => [
    `session/${session}`,
    ...people.map(({ person }) => `person/${person}` as const),
    ...people.flatMap(({ pass }) => (pass === null ? [] : [`pass/${pass}` as const])),
  ],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    desk.tellSession(asked.session, ...settleOffers(session.value, desk.made));
    return take(desk, asked, desk.session(asked.session) ?? session.value);
  },
});

function take(desk: Desk, asked: z.output<typeof ask>, session: SessionState): Result<Told> {
  const people = togetherInOrder(asked.people.map((it) => placeAsked(desk, session, asked.session, it)));
  if (!people.ok) return people;
  const [one, other] = people.value;
  if (one === undefined) throw new Error("nobody asked for a place");
  const held = holdPlaces(session, other === undefined ? [one] : [one, other], desk.made);
  if (!held.ok) return held;
  desk.tellSession(asked.session, ...held.value.events);
  settlePlaces(desk, asked.session, session);
  const { outcome } = held.value;
  return good({ outcome, says: [outcomeSentence(outcome, people.value.length, session, desk)] });
}

function outcomeSentence(
  outcome: "held" | "waiting",
  count: number,
  session: SessionState,
  desk: Desk,
): string {
  const when = `${session.name} on ${desk.writer.day(session.date)}`;
  if (outcome === "held") {
    const what = count === 1 ? "One place" : "Two places";
    return `${what} in ${when}. ${untilSentence(session, desk)}`;
  }
  const ahead = session.waiting.length;
  const list = desk.writer.word("waiting list");
  const turn = ahead === 0 ? `first on the ${list}` : `on the ${list} after ${ahead}`;
  return `${when} is full: ${turn}. Nothing is charged before a place is offered and taken.`;
}
