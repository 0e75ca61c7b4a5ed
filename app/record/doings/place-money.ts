import { meansOfPaying, paidFor, placeIn, placeUnknown } from "#core/roll";
import { bad, good, problem } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { settlePlaces } from "../settle-places.ts";
import { idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const amount = z.int().min(1).describe("whole minor units");

const pay = z
  .object({
    kind: z.literal("pay place"),
    session: idSchema,
    place: idSchema,
    amount,
    by: z.enum(meansOfPaying),
  })
  .describe("Money comes in for a place.");

export const payPlace = doing({
  ask: pay,
  needs: ({ session }) => [`session/${session}`],
  decide: ({ session: id, place, amount: coins, by }, desk) => {
    const session = sessionFound(desk, id);
    if (!session.ok) return session;
    const found = placeIn(session.value, place);
    if (found === undefined) return bad(placeUnknown());
    if (found.pass !== null) return bad(outOfPass());
    desk.tellSession(id, { kind: "paid", place, paid: { amount: coins, by } });
    settlePlaces(desk, id, session.value);
    return good({ says: [`${desk.writer.money(coins, session.value.currency)} taken by ${by}.`] });
  },
});

const back = pay.extend({ kind: z.literal("give money back") }).describe("Money for a place goes back.");

export const giveMoneyBack = doing({
  ask: back,
  needs: ({ session }) => [`session/${session}`],
  decide: ({ session: id, place, amount: coins, by }, desk) => {
    const session = sessionFound(desk, id);
    if (!session.ok) return session;
    const found = placeIn(session.value, place);
    if (found === undefined) return bad(placeUnknown());
    if (paidFor(found) < coins)
      return bad(moreThanPaid(desk.writer.money(paidFor(found), session.value.currency)));
    desk.tellSession(id, { kind: "paid back", place, paid: { amount: coins, by } });
    settlePlaces(desk, id, session.value);
    return good({ says: [`${desk.writer.money(coins, session.value.currency)} given back by ${by}.`] });
  },
});

function outOfPass() {
  const says = "This place is out of a pass, so nothing is to be paid for it.";
  return problem("place-out-of-pass", "place", says, "Write money for the pass down with the pass.");
}

function moreThanPaid(paid: string) {
  const says = `Only ${paid} came in for this place.`;
  return problem("more-than-paid", "amount", says, "Give back no more than that.");
}
