import { cashFound, moneyMoved, ownPutIn, ownTakenOut } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good, problem } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { amountSchema, currencySchema, dateProblem, isoDateSchema } from "./ask-parts.ts";

const minorUnits = z.int().min(0).describe("whole minor units");
const common = { currency: currencySchema, on: isoDateSchema };

const count = z
  .object({
    kind: z.literal("count cash"),
    ...common,
    expected: z.int().describe("what the box should hold by the books, as it was shown"),
    counted: minorUnits,
  })
  .describe("The box was counted, and what it holds more or less than the books is written down.");

export const countCash = doing({
  ask: count,
  needs: () => [],
  decide: ({ currency, on, expected, counted }, desk) => {
    const wrong = dateProblem(on);
    if (wrong !== null) return bad(wrong);
    const difference = counted - expected;
    const say = (amount: number) => desk.writer.money(amount, currency);
    if (difference === 0) return good({ says: [`The box holds ${say(counted)}, as the books say.`] });
    desk.post("books", cashFound({ difference, currency, on }));
    const much = `${say(Math.abs(difference))} ${difference > 0 ? "more" : "less"} than the books`;
    return good({ says: [`The box holds ${say(counted)}, ${much}: written down as a difference of cash.`] });
  },
});

const own = z
  .object({
    kind: z.literal("own money"),
    ...common,
    what: z.enum(["put in", "taken out"]),
    amount: amountSchema,
    by: z.enum(meansOfPaying).describe("where it is put, or taken from"),
  })
  .describe("Her own money is put into the practice, or taken out for herself.");

export const ownMoney = doing({
  ask: own,
  needs: () => [],
  decide: ({ currency, on, what, amount, by }, desk) => {
    const wrong = dateProblem(on);
    if (wrong !== null) return bad(wrong);
    const it = { amount, currency, on };
    desk.post("books", what === "put in" ? ownPutIn({ ...it, to: by }) : ownTakenOut({ ...it, from: by }));
    return good({ says: [`${desk.writer.money(amount, currency)} of your own money ${what}.`] });
  },
});

const move = z
  .object({
    kind: z.literal("move money"),
    ...common,
    from: z.enum(meansOfPaying),
    to: z.enum(meansOfPaying),
    amount: amountSchema,
    fee: minorUnits.default(0).describe("what is kept on the way, out of the amount"),
  })
  .describe("Money changes its place, like takings brought to the bank.");

export const moveMoney = doing({
  ask: move,
  needs: () => [],
  decide: (it, desk) => {
    const wrong = dateProblem(it.on);
    if (wrong !== null) return bad(wrong);
    if (it.from === it.to) return bad(samePlace());
    if (it.fee > it.amount) return bad(feeAbove());
    desk.post("books", moneyMoved(it));
    return good({ says: [`${desk.writer.money(it.amount, it.currency)} from ${it.from} to ${it.to}.`] });
  },
});

function samePlace() {
  const says = "The money would stay where it is.";
  return problem("money-stays", "to", says, "Choose another place for it to go to.");
}

function feeAbove() {
  const says = "The fee is more than the money that was moved.";
  return problem("fee-above-amount", "fee", says, "Write the fee in the currency, not as a share.");
}
