import { z } from "zod";
import { yearMoneySchema } from "./money-document.ts";

const { months, opening, work, moves, tax, path, guesses } = yearMoneySchema.shape;
const one = work.unwrap().element.shape;

const ownSchema = z.object({
  class: z.string().describe("id of the class in the practice"),
  out: z.boolean().default(false).describe("left out of the money"),
  perSession: one.perSession
    .optional()
    .describe("takings, where they are not to be taken from the class sheet"),
  changes: one.changes,
  passes: one.passes.describe("where they are not to be taken from the class sheet"),
  hallPaid: one.paid.describe("when the hall is paid; not stated: 14 days after the month, a guess"),
});

/**
 * What a practice keeps of its money: all of the money of a year that its classes and its currency do not tell. A class
 * of the practice comes in by itself; `own` holds only what she says about it here.
 */
export const moneyPlanSchema = z
  .object({
    format: z.literal("hallful/money-plan@1").optional(),
    from: z
      .string()
      .optional()
      .describe("YYYY-MM-DD; not stated: the first of the month in which it is looked at"),
    months,
    opening,
    own: z.array(ownSchema).default([]),
    work,
    moves,
    tax: tax.unwrap().nullable().optional().describe("not stated: by the currency; null: without tax"),
    path,
    guesses,
  })
  .describe("The money that a practice plans with: a document of the practice, beside its classes.");

export type MoneyPlan = z.output<typeof moneyPlanSchema>;
