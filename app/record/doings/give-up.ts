import { type LateCharge, lateCharge, noticeOf } from "#core/notice";
import { giveUpPlace, type Place, placeIn, type SessionState, settleOffers } from "#core/roll";
import { good, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { settlePlaces } from "../settle-places.ts";
import { idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const ask = z
  .object({
    kind: z.literal("give up place"),
    session: idSchema,
    place: idSchema,
    kindly: z.boolean().default(false).describe("the teacher lets a lateness go"),
  })
  .describe("A place is given up, early or late by the moment at which it was made.");

export const giveUp = doing({
  ask,
  needs: ({ session, place }, known) => {
    const found = known.session(session);
    const held = found === undefined ? undefined : placeIn(found, place);
    return [
      `session/${session}`,
      ...(held === undefined ? [] : [`person/${held.person}` as const]),
      ...(held === undefined || held.pass === null ? [] : [`pass/${held.pass}` as const]),
    ];
  },
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    return session.ok ? givenUp(desk, asked, session.value) : session;
  },
});

function givenUp(desk: Desk, asked: z.output<typeof ask>, session: SessionState): Result<Told> {
  const { notice: rule, zone, starts } = session;
  const notice = noticeOf({ rule, zone, starts, made: desk.made, arrived: desk.arrived }, desk.writer);
  const place = placeIn(session, asked.place);
  const charge = place === undefined ? null : chargeOf(desk, session, place, notice.late);
  const waived = notice.late && (charge?.charged === false || asked.kindly);
  const events = giveUpPlace(session, asked.place, { late: notice.late, waived });
  if (!events.ok) return events;
  desk.tellSession(asked.session, ...events.value);
  const person = place?.person ?? "";
  if (notice.late && desk.person(person) !== undefined)
    desk.tellPerson(person, { kind: "gave up late", session: asked.session, waived });
  settlePlaces(desk, asked.session, session);
  const after = desk.session(asked.session) ?? session;
  desk.tellSession(asked.session, ...settleOffers(after, desk.made));
  return good({ says: [notice.sentence, ...chargeWords(charge, asked.kindly)] });
}

/** Whether somebody else comes in on the place is not known yet: then it is let go by `letGoFilled`. */
function chargeOf(desk: Desk, session: SessionState, { person, how: heldBy }: Place, late: boolean) {
  const before = desk.person(person)?.late.times;
  const firstWaived = session.firstLateWaived && before !== undefined;
  const asked = { what: "given-up", late, heldBy, before: before ?? 0, firstWaived } as const;
  return lateCharge({ ...asked, filled: false, chargedBefore: false });
}

function chargeWords(charge: LateCharge | null, kindly: boolean): readonly string[] {
  if (charge === null || charge.why === "in-time") return [];
  if (!charge.charged) return [charge.sentence];
  return kindly
    ? ["It is let go this time, and nothing is charged."]
    : [charge.sentence, "When somebody who waits takes the place, it is not charged."];
}
