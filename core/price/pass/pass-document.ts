import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");

/** The days on which a holder can come, and the spans in which she cannot. */
export const passCalendarSchema = z.object({
  from: isoDate.describe("the first day on which the pass counts"),
  weekday: z.number().describe("the day of the class: 1 is Monday, 7 is Sunday"),
  closures: z
    .array(z.object({ from: isoDate, until: isoDate, why: z.string().default("closed") }))
    .default([]),
});

/** Passes of one kind that are still good. */
export const livePassSchema = z.object({
  price: money.describe("paid for each"),
  classes: z.number().describe("that each holds"),
  passes: z.number().default(1).describe("how many of them are out"),
  left: z.number().describe("classes left, over all of them"),
});

export type LivePassDocument = z.output<typeof livePassSchema>;

/** A pass: for how long it should run, and what is owed on the passes that are out. */
export const passDocumentSchema = z
  .object({
    format: z.literal("hallful/pass@1").optional(),
    classes: z.number().describe("how many classes it holds"),
    attendance: z
      .number()
      .describe("share of the sessions she could attend that a holder does attend, between 0 and 1"),
    confidence: z.number().default(0.85).describe("share of holders who should use it up in time"),
    teachingWeeks: z.number().optional().describe("the use-by given now, to be compared"),
    calendar: passCalendarSchema.optional(),
    currency: z.string().optional().describe("ISO 4217 code of the live passes"),
    live: z.array(livePassSchema).optional().describe("passes that are still good"),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("A pass: its size, how often its holders come, and for how long it should run.");

export type PassDocument = z.output<typeof passDocumentSchema>;
export type PassDocumentInput = z.input<typeof passDocumentSchema>;
