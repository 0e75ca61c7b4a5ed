import { arrangements } from "#core/hall";
import { mixSchema, pricesSchema } from "#core/price";
import { z } from "zod";
import { classOutlookSchema } from "./class-outlook-document.ts";
import { planningSchema } from "./planning-document.ts";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");
const isoDate = z.string().describe("YYYY-MM-DD");

/** A class: the offer that repeats. The hall is named by the id of its record in the same practice. */
export const classDocumentSchema = z
  .object({
    format: z.literal("hallful/class@1").optional(),
    name: z.string(),
    whoFor: z.string().default(""),
    hall: z.string().nullable().default(null).describe("id of the hall's record, or null while undecided"),
    weekday: z.number().describe("1 is Monday, 7 is Sunday"),
    start: z.string().describe("HH:MM, when the class begins, local to the hall"),
    minutes: z.object({
      setUp: minutes,
      class: minutes,
      packDown: minutes,
      travel: minutes.describe("there and back"),
      preparation: minutes,
      admin: minutes,
    }),
    mats: z
      .object({
        mat: z.object({ length: z.number(), width: z.number() }),
        gaps: z.object({ side: z.number(), end: z.number(), wall: z.number() }),
      })
      .nullable()
      .default(null)
      .describe("metres; null takes the hall's own"),
    arrangement: z
      .enum(arrangements)
      .optional()
      .describe("how the mats stand for this class; not stated: as the hall has it"),
    matsOwned: z.number().nullable().default(null).describe("mats she has or people bring; null: enough"),
    ownCap: z.number().nullable().default(null).describe("the most she wants; null: none"),
    insurerCap: z
      .number()
      .nullable()
      .default(null)
      .describe("the most her insurer covers; null: none stated"),
    costs: z.object({ travel: money, music: money, cover: money, other: money, perHead: money }),
    prices: pricesSchema,
    mix: mixSchema,
    heads: z.number().describe("people on mats on an ordinary evening"),
    year: z.object({
      from: isoDate,
      until: isoDate,
      closures: z.array(z.object({ from: isoDate, until: isoDate, why: z.string() })),
      fixedPerYear: money.describe("insurance, training and the like that this class should carry"),
    }),
    planning: planningSchema.optional().describe("what the questions about prices rest on"),
    outlook: classOutlookSchema
      .optional()
      .describe("what is guessed of its opening, its regulars and what to do next"),
    guesses: z
      .array(z.string())
      .default([])
      .describe("paths of the fields that are still guesses, like heads or hire.perHour"),
  })
  .describe("A class: who it is for, when and where, what an evening costs, prices, and its year.");

export type ClassDocument = z.output<typeof classDocumentSchema>;
export type ClassDocumentInput = z.input<typeof classDocumentSchema>;
