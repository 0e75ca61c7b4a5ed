import { studioSchema } from "#core/price";
import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');

/** What the questions about prices rest on. All of it may be left out: then usual figures stand in as guesses. */
export const planningSchema = z.object({
  attendance: z
    .number()
    .optional()
    .describe("share of the sessions that the holder of a pass comes to, between 0 and 1"),
  confidence: z
    .number()
    .optional()
    .describe("share of the holders who should use up their pass in time, between 0 and 1"),
  dispersion: z
    .number()
    .optional()
    .describe("variance ÷ mean of the heads: 1 as by chance (Poisson), 1.5 more uneven"),
  termEvenings: z.number().optional().describe("evenings of a term"),
  beliefs: z
    .array(z.object({ price: money, heads: z.number() }))
    .optional()
    .describe("at that single price so many would like to come"),
  survey: z.string().optional().describe("prices nearby, a line for each: where; price; heads"),
  studio: studioSchema.optional().describe("what a studio pays for a class"),
});

export type Planning = z.output<typeof planningSchema>;
