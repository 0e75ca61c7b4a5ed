import { hireTermsSchema } from "#core/hall";
import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");

/** Every way to pay. A free place needs no price: it is the key "free" of the mix. */
export const pricesSchema = z.object({
  single: money.optional().describe("one class, paid for once"),
  passes: z.array(z.object({ classes: z.number(), price: money })).default([]),
  concession: money.optional(),
  courses: z
    .array(z.object({ sessions: z.number(), price: money }))
    .optional()
    .describe("blocks: the whole price of so many sessions"),
  payWhatYouCan: z
    .object({
      floor: money,
      average: money.optional().describe("what people really give; the floor unless told"),
    })
    .optional(),
  monthly: z
    .object({
      perSession: money,
      sessionsPerYear: z.number().optional().describe("a class with its dates counts them itself"),
    })
    .optional()
    .describe("a year of sessions paid in twelve equal parts"),
});

export type PricesDocument = z.output<typeof pricesSchema>;

/**
 * Shares of the people on the mats, which add to 1. The keys are single, concession, free, pay-what-you-can,
 * monthly, pass-10 for a pass of ten and course-6 for a block of six.
 */
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
