import { type PassEvent, passProblem } from "#core/books";
import { meansOfPaying } from "#core/roll";
import { bad, good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { tellPass } from "../settle-places.ts";
import { idSchema, isoDateSchema } from "./ask-parts.ts";

const day = { on: isoDateSchema };

/** Everything but a sale that is done to a pass itself; what places do to it follows from the register. */
const change = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("paid"), ...day, amount: z.int().min(1), how: z.enum(meansOfPaying) }),
  z.object({ kind: z.literal("paused"), ...day, from: isoDateSchema }),
  z.object({ kind: z.literal("resumed"), ...day, useBy: isoDateSchema }),
  z.object({
    kind: z.literal("extended"),
    ...day,
    useBy: isoDateSchema,
    why: z.enum(["closure", "kindness"]),
  }),
  z.object({ kind: z.literal("transferred"), ...day, to: idSchema }),
  z.object({
    kind: z.literal("refunded"),
    ...day,
    classes: z.int(),
    amount: z.int(),
    how: z.enum(meansOfPaying),
    sessions: z.array(idSchema).default([]),
  }),
  z.object({ kind: z.literal("swapped"), ...day, from: idSchema, to: idSchema }),
  z.object({ kind: z.literal("expired"), ...day, classes: z.int() }),
]);

const ask = z
  .object({ kind: z.literal("change pass"), pass: idSchema, change })
  .describe("A pass is paid, paused, taken up again, extended, handed on, given back, swapped or run out.");

export const changePass = doing({
  ask,
  needs: ({ pass, change: it }) => [
    `pass/${pass}`,
    ...(it.kind === "transferred" ? [`person/${it.to}` as const] : []),
  ],
  decide: ({ pass, change: event }, desk) => {
    const found = passProblem(desk.pass(pass) ?? null, event, desk.writer);
    if (found !== null) return bad(found);
    tellPass(desk, pass, event);
    const after = desk.pass(pass);
    if (after === undefined) throw new Error(`told, but not there: ${pass}`);
    const use = `${after.left} classes left, use by ${desk.writer.day(after.useBy)}.`;
    return good({ says: [`${doneWords(event)} ${use}`] });
  },
});

function doneWords(event: Exclude<PassEvent, { readonly kind: "sold" }>): string {
  switch (event.kind) {
    case "paid":
      return "Paid.";
    case "paused":
      return "Paused.";
    case "resumed":
      return "Taken up again.";
    case "extended":
      return "Extended.";
    case "transferred":
      return "Handed on.";
    case "refunded":
      return "Given back.";
    case "swapped":
      return "Swapped.";
    case "expired":
      return "Run out.";
    case "promised":
    case "freed":
    case "used":
    case "returned":
      return "";
  }
}
