import { z } from "zod";
import { pricesSchema } from "../evening-document.ts";

const money = z.string().describe('decimal string, like "12.50"');

/** Every way to pay. A free place needs no price: it is the key "free" of the mix. */
export const ladderPricesSchema = pricesSchema.extend({
  courses: z
    .array(z.object({ sessions: z.number(), price: money }))
    .default([])
    .describe("blocks: the whole price of so many sessions"),
  payWhatYouCan: z
    .object({
      floor: money,
      average: money.optional().describe("what people really give; the floor unless told"),
    })
    .optional(),
  monthly: z
    .object({ perSession: money, sessionsPerYear: z.number() })
    .optional()
    .describe("a year of sessions paid in twelve equal parts"),
});

export type LadderPrices = z.output<typeof ladderPricesSchema>;
