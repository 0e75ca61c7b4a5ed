import { type Cost, costDue, costPaid, duePaid } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { amountSchema, currencySchema, dateProblem, idSchema, isoDateSchema } from "./ask-parts.ts";

const headings = [
  "hall",
  "cover",
  "travel",
  "music",
  "insurance",
  "kit",
  "training",
  "fees",
  "other",
] as const satisfies readonly Cost["cost"][];

const ask = z
  .object({
    kind: z.literal("write cost"),
    cost: z.enum(headings),
    to: idSchema.describe("the hall, the cover teacher or whoever is paid"),
    amount: amountSchema,
    currency: currencySchema,
    on: isoDateSchema,
    how: z
      .enum(["due", "bought", "due paid"])
      .describe("owed from now on, paid at once, or what was owed is paid"),
    by: z.enum(meansOfPaying).default("bank"),
    session: idSchema.optional(),
  })
  .describe("What teaching costs is written into the books: owed, paid at once, or paid at last.");

export const writeCost = doing({
  ask,
  needs: () => [],
  decide: ({ cost, to, amount, currency, on, how, by, session }, desk) => {
    const wrong = dateProblem(on);
    if (wrong !== null) return bad(wrong);
    const it = { cost, to, amount, currency, on, ...(session === undefined ? {} : { session }) };
    const written = how === "due" ? costDue(it) : how === "bought" ? costPaid(it, by) : duePaid(it, by);
    desk.post(session === undefined ? "books" : `session/${session}`, written);
    return good({ says: [`${desk.writer.money(amount, currency)} for ${cost}.`] });
  },
});
