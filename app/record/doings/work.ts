import { type Entry, undone, type Work, workDone, workPaid } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { amountSchema, currencySchema, dateProblem, idSchema, isoDateSchema } from "./ask-parts.ts";

const ask = z
  .object({
    kind: z.literal("write work"),
    how: z
      .enum(["taught", "paid", "let go"])
      .describe("owed to her from now on, paid at last, or not to be paid after all"),
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
    desk.post("books", entryOf(it, how, by));
    const done = { taught: "owed to you", paid: "paid", "let go": "not to be paid after all" }[how];
    return good({ says: [`${desk.writer.money(amount, currency)} for ${invoice} is ${done}.`] });
  },
});

type Asked = z.output<typeof ask>;

function entryOf(it: Work, how: Asked["how"], by: Asked["by"]): Entry {
  if (how === "paid") return workPaid(it, by);
  return how === "taught" ? workDone(it) : undone(workDone(it), it.on);
}
