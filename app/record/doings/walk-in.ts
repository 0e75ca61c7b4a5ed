import { cameOver, contactSchema, placeOf, type SessionState, walkIn as walkedIn } from "#core/roll";
import { good, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { letGoFilled, passesOfLate } from "../let-go-filled.ts";
import { settlePlaces } from "../settle-places.ts";
import { howSchema, idSchema, nameSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";
import { placeAsked } from "./place-asked.ts";

const ask = howSchema
  .extend({
    kind: z.literal("walk in"),
    session: idSchema,
    place: idSchema,
    person: idSchema,
    contact: contactSchema
      .extend({ name: nameSchema })
      .nullable()
      .default(null)
      .describe("of somebody who is not known yet"),
    noSignal: z
      .boolean()
      .default(false)
      .describe("let in at a door without signal: it happened, and is kept"),
  })
  .describe("Somebody comes to the door without a place.");

export const walkIn = doing({
  ask,
  needs: ({ session, person, pass }, known) => [
    `session/${session}`,
    `person/${person}`,
    ...(pass === null ? [] : [`pass/${pass}` as const]),
    ...passesOfLate(known.session(session)),
  ],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    if (asked.contact !== null && desk.person(asked.person) === undefined)
      desk.tellPerson(asked.person, { kind: "met", contact: asked.contact });
    return letIn(desk, asked, session.value);
  },
});

function letIn(desk: Desk, asked: z.output<typeof ask>, session: SessionState): Result<Told> {
  const place = placeAsked(desk, session, asked.session, asked);
  if (!place.ok) return place;
  const events = walkedIn(session, place.value);
  if (!events.ok) return asked.noSignal && isFull(events.problems) ? over(desk, asked, session) : events;
  desk.tellSession(asked.session, ...events.value);
  settlePlaces(desk, asked.session, session);
  letGoFilled(desk, asked.session);
  return good({ says: ["On the register, and on a mat."], outcome: "held" });
}

function isFull(problems: readonly { readonly code: string }[]): boolean {
  return problems.every(({ code }) => code === "no-mat-left");
}

/** Money that was taken is told and not posted: it is hers to give back or to write down. */
function over(desk: Desk, asked: z.output<typeof ask>, session: SessionState): Result<Told> {
  if (
    placeOf(session, asked.person) === undefined ||
    !session.cameOver.some((it) => it.person === asked.person)
  )
    desk.tellSession(asked.session, cameOver(asked.person, asked.paid));
  const says = [
    `All ${session.capacity} mats were taken by the time this was told: somebody took the last one while there was no signal.`,
    "The name is written down beside the places, with what was paid. Settle it with them; nothing was lost.",
  ];
  return good({ says, outcome: "came over" });
}
