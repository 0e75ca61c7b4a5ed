import { passProblem, type PassSold } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { tellPass } from "../settle-places.ts";
import { idSchema, isoDateSchema, nameSchema } from "./ask-parts.ts";
import { personFound } from "./found.ts";

const ask = z
  .object({
    kind: z.literal("sell pass"),
    pass: idSchema,
    form: z.enum(["pass", "block"]),
    holder: idSchema,
    name: nameSchema,
    on: isoDateSchema,
    size: z.int(),
    price: z.int().min(0),
    currency: z.string(),
    paid: z.enum([...meansOfPaying, "later"]),
    useBy: isoDateSchema.describe("the last day on which it counts"),
    valid: z.union([z.literal("all"), z.array(idSchema)]),
    sessions: z.array(idSchema).default([]).describe("of a block"),
    terms: z.object({
      perClassOnRefund: z.int().min(0).nullable(),
      transferable: z.boolean(),
      pauses: z.int().min(0).nullable(),
    }),
  })
  .describe("A pass of classes, or a block of sessions, is sold.");

export const sellPass = doing({
  ask,
  needs: ({ pass, holder }) => [`pass/${pass}`, `person/${holder}`],
  decide: (asked, desk) => {
    const holder = personFound(desk, asked.holder);
    if (!holder.ok) return holder;
    return sold(desk, { ...asked, kind: "sold" });
  },
});

function sold(desk: Desk, event: PassSold): Result<Told> {
  const found = passProblem(desk.pass(event.pass) ?? null, event, desk.writer);
  if (found !== null) return bad(found);
  tellPass(desk, event.pass, event);
  const { day, money } = desk.writer;
  const price = money(event.price, event.currency);
  const paid = event.paid === "later" ? "to be paid later" : `paid by ${event.paid}`;
  return good({
    says: [`${event.name}: ${event.size} classes for ${price}, ${paid}, use by ${day(event.useBy)}.`],
  });
}
