import { z } from "zod";
import { mixSchema, pricesSchema } from "../evening-document.ts";
import { studioSchema } from "../studio/studio-document.ts";

const money = z.string().describe('decimal string, like "12.50"');

/** What a class asks and what comes of it: the ladder, the people, the curve, the studio. */
export const priceDocumentSchema = z
  .object({
    format: z.literal("hallful/price@1").optional(),
    currency: z.string(),
    cost: money.describe("what a session costs whoever comes, as hallful evening tells it"),
    perHead: money.default("0"),
    prices: pricesSchema,
    mix: mixSchema,
    heads: z.number().describe("people who would like to come, on average"),
    dispersion: z
      .number()
      .default(1)
      .describe("variance ÷ mean of the heads: 0 always the same, 1 as by chance (Poisson), 1.5 more uneven"),
    capacity: z.number().describe("people on mats, all limits counted: as hallful fit tells it"),
    sessions: z.number().default(12).describe("evenings of a term"),
    doorToDoorMinutes: z.number().optional().describe("travel, set-up, class and pack-down"),
    deepest: z.number().default(0.25).describe("share below what most pay under which nothing should lie"),
    rises: z.array(money).default([]).describe("price rises that she thinks of"),
    target: z
      .object({ perHour: money, taxShare: z.number().default(0) })
      .optional()
      .describe("what she wants for an hour from door to door, after tax"),
    beliefs: z
      .array(z.object({ price: money, heads: z.number() }))
      .optional()
      .describe("two or three: at that single price so many would like to come"),
    survey: z
      .union([
        z.string(),
        z.array(z.object({ where: z.string().optional(), price: money, heads: z.number().optional() })),
      ])
      .optional()
      .describe("prices nearby, as rows or as a pasted table: where, price, heads"),
    lookedAt: z
      .object({ from: money, until: money })
      .optional()
      .describe("the prices that the curve looks at"),
    studio: studioSchema.optional(),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("The prices of a class: the ladder, how many come, the price curve, own class or studio.");

export type PriceDocument = z.output<typeof priceDocumentSchema>;
export type PriceDocumentInput = z.input<typeof priceDocumentSchema>;
