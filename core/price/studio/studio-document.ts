import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');

export const studioPaySchema = z.discriminatedUnion("form", [
  z.object({ form: z.literal("flat"), pay: money }),
  z.object({
    form: z.literal("tiered"),
    base: money,
    perHead: money.describe("for each head above"),
    above: z.number().describe("heads that the base covers"),
    cap: money.optional(),
  }),
  z.object({ form: z.literal("per head"), perHead: money, minimum: money.default("0") }),
  z.object({
    form: z.literal("share of takings"),
    share: z.number().describe("between 0 and 1"),
    takingsPerHead: money.describe("what one person pays there on average"),
    minimum: money.default("0"),
  }),
]);

export const studioSchema = z.object({
  name: z.string().default("the studio"),
  pay: studioPaySchema,
  heads: z.number().describe("people in her class there on average"),
  capacity: z.number().default(100),
  dispersion: z.number().default(1),
  travelCost: money.default("0"),
  minutes: z.number().describe("from her door to her door"),
});

export type StudioDocument = z.output<typeof studioSchema>;
