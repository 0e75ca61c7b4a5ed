import { hireTermsSchema } from "#core/hall";
import { z } from "zod";
import { mixSchema, pricesSchema } from "../evening-document.ts";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");
const isoDate = z.string().describe("YYYY-MM-DD");
const clock = z.string().describe("HH:MM");
const span = z.object({ from: isoDate, until: isoDate });
const closures = z.array(span.extend({ why: z.string().default("closed") })).default([]);

export const comparedHallSchema = z.object({
  name: z.string(),
  currency: z.string().optional().describe("when it is stated it must be that of the comparison"),
  capacity: z.number().describe("people on mats, all limits counted: as hallful fit tells it"),
  arrangement: z
    .string()
    .optional()
    .describe("how the mats stand for that many; told where there are others"),
  arrangements: z
    .array(z.object({ name: z.string(), capacity: z.number() }))
    .optional()
    .describe("other ways for the mats to stand, each compared as well"),
  hire: hireTermsSchema,
  travelMinutes: minutes.describe("there and back"),
  travelCost: money.default("0"),
  free: z
    .array(z.object({ weekday: z.number(), from: clock, until: clock }))
    .optional()
    .describe("when it can be had, from letting in to locking up; not stated: taken to be free"),
  terms: z.array(span).optional().describe("it can be had between these dates only"),
  closures,
});

/** Several halls for one class: the same people, prices and hours, each hall with its own terms. */
export const compareDocumentSchema = z
  .object({
    format: z.literal("hallful/compare@1").optional(),
    currency: z.string(),
    slots: z
      .array(z.object({ weekday: z.number().describe("1 is Monday, 7 is Sunday"), start: clock }))
      .describe("when the class could be: each is looked at in each hall"),
    minutes: z.object({ setUp: minutes, class: minutes, packDown: minutes }),
    year: span.extend({ closures }).describe("the year of the class and when she does not teach in it"),
    otherCost: money.default("0").describe("music, cover and the like, for the session"),
    perHead: money.default("0"),
    prices: pricesSchema,
    mix: mixSchema,
    heads: z.number().describe("people who would like to come, on average"),
    dispersion: z
      .number()
      .default(1)
      .describe("variance ÷ mean of the heads: 0 always the same, 1 as by chance (Poisson), 1.5 more uneven"),
    halls: z.array(comparedHallSchema),
    by: z
      .enum(["session", "year", "hour"])
      .default("year")
      .describe("by which the leader is told, and what would change it"),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("Halls for one class, to be compared a session, a year and an hour from door to door.");

export type CompareDocument = z.output<typeof compareDocumentSchema>;
export type CompareDocumentInput = z.input<typeof compareDocumentSchema>;
export type ComparedHallDocument = z.output<typeof comparedHallSchema>;
