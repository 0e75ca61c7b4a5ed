import { arrangements } from "#core/hall";
import { livePassSchema, studioSchema } from "#core/price";
import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");
const clock = z.string().describe("HH:MM");

/** What a hall that the class could be in takes of her, and when it can be had. */
const hallForClassSchema = z.object({
  travelMinutes: z.number().optional().describe("there and back; not stated: as to the class's own hall"),
  travelCost: money.optional(),
  free: z
    .array(z.object({ weekday: z.number(), from: clock, until: clock }))
    .optional()
    .describe("from letting in to locking up; not stated: taken to be free"),
  terms: z
    .array(z.object({ from: isoDate, until: isoDate }))
    .optional()
    .describe("it can be had between these dates only; not stated: all year"),
  closures: z.array(z.object({ from: isoDate, until: isoDate, why: z.string() })).optional(),
});

export type HallForClass = z.output<typeof hallForClassSchema>;

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
  rise: money.optional().describe("a rise of the single price that she thinks of"),
  target: z
    .object({ perHour: money, taxShare: z.number().describe("the part that goes in tax, 0.2 is a fifth") })
    .optional()
    .describe("what she wants for an hour from door to door, after tax"),
  survey: z.string().optional().describe("prices nearby, a line for each: where; price; heads"),
  halls: z
    .record(z.string(), hallForClassSchema)
    .optional()
    .describe("what getting to a hall takes and when it can be had, by the id of its record"),
  live: z
    .array(livePassSchema)
    .optional()
    .describe("passes that are out and still good, as she has counted them"),
  slots: z
    .array(z.object({ weekday: z.number(), start: clock }))
    .optional()
    .describe("other times of the week at which halls are compared for the class"),
  arrangements: z
    .array(z.enum(arrangements))
    .optional()
    .describe(
      "ways for the mats to stand that halls are compared with; not stated: as the class or the hall has it",
    ),
  studio: studioSchema.optional().describe("what a studio pays for a class"),
});

export type Planning = z.output<typeof planningSchema>;
