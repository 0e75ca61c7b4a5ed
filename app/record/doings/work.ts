import { workDone, workPaid } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { amountSchema, currencySchema, dateProblem, idSchema, isoDateSchema } from "./ask-parts.ts";

const ask = z
  .object({
    kind: z.literal("write work"),
    how: z.enum(["taught", "paid"]).describe("owed to her from now on, or paid at last"),
    heading: z.enum(["studio", "workshop", "private", "other"]),
    invoice: idSchema.describe("the invoice, or whatever the payment will name"),
    amount: amountSchema,
    currency: currencySchema,
    on: isoDateSchema,
    by: z.enum(meansOfPaying).default("bank"),
  })
  .describe("Work that is paid by invoice: taught and owed, or paid.");

export const writeWork = doing({
  ask,
  needs: () => [],
  decide: ({ how, heading, invoice, amount, currency, on, by }, desk) => {
    const wrong = dateProblem(on);
    if (wrong !== null) return bad(wrong);
    const it = { heading, invoice, amount, currency, on };
    desk.post("books", how === "taught" ? workDone(it) : workPaid(it, by));
    const done = how === "taught" ? "owed to you" : "paid";
    return good({ says: [`${desk.writer.money(amount, currency)} for ${invoice} is ${done}.`] });
  },
});
