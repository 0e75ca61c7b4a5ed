import { hireTermsSchema } from "#core/hall";
import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");

export const pricesSchema = z.object({
  single: money.optional().describe("one class, paid for once"),
  passes: z.array(z.object({ classes: z.number(), price: money })).default([]),
  concession: money.optional(),
});

/** Shares of the people on the mats; the keys are single, pass-N, concession and free; they add to 1. */
export const mixSchema = z.record(z.string(), z.number());

export const eveningMinutesSchema = z.object({
  setUp: minutes,
  class: minutes,
  packDown: minutes,
  travel: minutes.default(0).describe("there and back"),
  other: minutes.default(0).describe("preparation, messages and money for this session"),
});

/** One evening: what the hall charges, what she charges, who comes. */
export const eveningDocumentSchema = z
  .object({
    format: z.literal("hallful/evening@1").optional(),
    currency: z.string(),
    date: z.string().describe("YYYY-MM-DD, the date of the session in the hall's own calendar"),
    hire: hireTermsSchema,
    minutes: eveningMinutesSchema,
    travelCost: money.default("0"),
    otherCost: money.default("0").describe("music, cover and the like, for the session"),
    perHead: money.default("0").describe("what each person costs her: tea, card fee"),
    prices: pricesSchema,
    mix: mixSchema,
    heads: z.number().describe("people on mats on an ordinary evening"),
    fixedPerYear: money.optional().describe("insurance, training and the like; only for true hourly"),
    sessionsPerYear: z.number().optional().describe("over which the fixed costs are spread"),
  })
  .describe("One evening of one class: the hire, the prices, the mix of payers and the heads.");

export type EveningDocument = z.output<typeof eveningDocumentSchema>;
export type EveningDocumentInput = z.input<typeof eveningDocumentSchema>;
