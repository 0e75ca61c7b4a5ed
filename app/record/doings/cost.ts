import {
  type Cost,
  costDue,
  costHeadings,
  costLetGo,
  costPaid,
  duePaid,
  type Entry,
  undone,
} from "#core/books";
import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { bad, good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { amountSchema, currencySchema, dateProblem, idSchema, isoDateSchema } from "./ask-parts.ts";

const ask = z
  .object({
    kind: z.literal("write cost"),
    cost: z.enum(costHeadings),
    to: idSchema.describe("the hall, the cover teacher or whoever is paid"),
    amount: amountSchema,
    currency: currencySchema,
    on: isoDateSchema,
    how: z
      .enum(["due", "bought", "due paid", "let go", "came back"])
      .describe(
        "owed from now on, paid at once, what was owed is paid or not to be paid after all, or money came back",
      ),
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
    desk.post(session === undefined ? "books" : `session/${session}`, entryOf(it, how, by));
    return good({ says: [`${desk.writer.money(amount, currency)} for ${cost}${endings[how]}.`] });
  },
});

type How = z.output<typeof ask>["how"];

function entryOf(it: Cost, how: How, by: MeansOfPaying): Entry {
  switch (how) {
    case "due":
      return costDue(it);
    case "bought":
      return costPaid(it, by);
    case "due paid":
      return duePaid(it, by);
    case "let go":
      return costLetGo(it);
    case "came back":
      return undone(costPaid(it, by), it.on);
  }
}

const endings: Readonly<Record<How, string>> = {
  due: ", to be paid",
  bought: ", paid",
  "due paid": ", paid",
  "let go": ", not to be paid after all",
  "came back": " came back",
};
