import { z } from "zod";
import { regions } from "./holidays/public-holiday.ts";

const isoDate = z.string().describe("YYYY-MM-DD");
const clock = z.string().describe("HH:MM");
const minutes = z.number().describe("whole minutes");

const daysOffSchema = z.object({
  from: isoDate,
  until: isoDate.optional().describe("the last day, where there is more than one"),
  why: z.string(),
});

const dayListSchema = z
  .object({
    days: z.array(daysOffSchema).default([]),
    text: z
      .string()
      .default("")
      .describe(
        "a pasted list, a line for each: Half-term 26 to 30 October 2026; days before months unless en-US",
      ),
  })
  .default({ days: [], text: "" });

const bookedSchema = z
  .object({
    title: z.string(),
    from: z.string().describe("YYYY-MM-DDTHH:MM by the clocks of the hall, or YYYY-MM-DD for whole days"),
    until: z.string().describe("the end, or the last whole day"),
  })
  .describe("what the hall's own calendar has");

const hallSchema = z.object({
  id: z.string(),
  name: z.string().optional(),
  zone: z.string().optional().describe("IANA zone, where it is not the zone of the year"),
  closed: dayListSchema.describe("when the hall is closed"),
  polling: z.boolean().default(false).describe("people vote there: it is closed on the days of elections"),
  booked: z.array(bookedSchema).default([]),
  mine: z
    .array(z.string())
    .default([])
    .describe("words in the titles of what is booked by herself, so that it is no clash"),
});

const classSchema = z.object({
  id: z.string(),
  name: z.string().optional(),
  hall: z.string().describe("id of its hall"),
  start: clock.describe("HH:MM by the clocks of the hall, when the class begins"),
  minutes: z.object({
    before: minutes.default(0).describe("from having to be there to the start"),
    teach: minutes,
    after: minutes.default(0).describe("from the end to leaving"),
  }),
  weekday: z.number().optional().describe("1 is Monday, 7 is Sunday; or give a rule"),
  rule: z
    .string()
    .optional()
    .describe("RRULE of RFC 5545 instead of the weekday, like FREQ=MONTHLY;BYDAY=1SA; it begins on from"),
  from: isoDate.optional().describe("first day on which it can be, the year's unless told"),
  until: isoDate.optional(),
  closed: dayListSchema.describe("when this class does not run, beside all else"),
});

const restSchema = z.object({
  class: z.string(),
  publicHolidays: z.boolean().default(false).describe("it runs on public holidays"),
  schoolHolidays: z.boolean().default(true).describe("it runs in school holidays"),
});

const changeSchema = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("move"),
    class: z.string(),
    date: isoDate.describe("the day on which it would have been"),
    to: isoDate,
    start: clock.optional(),
    times: z.number().default(1).describe("how often it was moved, so that calendars take the newest"),
  }),
  z.object({
    kind: z.literal("cancel"),
    class: z.string(),
    date: isoDate,
    why: z.string().default("cancelled"),
  }),
  z.object({ kind: z.literal("extra"), class: z.string(), date: isoDate, start: clock.optional() }),
]);

/** What she decides about a year, apart from the classes themselves. */
const decided = {
  holidays: z
    .object({
      region: z.enum(regions),
      also: z.array(daysOffSchema).default([]).describe("a day proclaimed later, or kept locally"),
      not: z.array(isoDate).default([]).describe("public holidays that count for nothing here"),
    })
    .default({ region: "none", also: [], not: [] }),
  school: dayListSchema.describe("school holidays where she teaches"),
  timeOff: dayListSchema.describe("her own time off"),
  elections: z.array(isoDate).default([]).describe("days on which halls are polling places"),
  sick: z
    .object({ share: z.number().describe("share of the sessions that she expects to lose by being ill") })
    .default({ share: 0.03 }),
  runs: z.array(restSchema).default([]).describe("which classes run in holidays"),
  changes: z.array(changeSchema).default([]).describe("single sessions moved, cancelled or added"),
  edition: z
    .number()
    .default(0)
    .describe("counts the calendar files given out, so that a later one is newer"),
};

/** A year: its classes and what takes dates from them. */
export const yearDocumentSchema = z
  .object({
    from: isoDate,
    until: isoDate,
    zone: z.string().describe("IANA zone of the halls, like Europe/London"),
    locale: z.enum(["en-GB", "en-US"]).default("en-GB").describe("for the order of day and month in lists"),
    ...decided,
    halls: z.array(hallSchema).default([]),
    classes: z.array(classSchema),
  })
  .describe("A year by its real dates: classes, halls and when they are closed, holidays, time off.");

const keptHallSchema = hallSchema.omit({ name: true, zone: true });

/** What a practice keeps of its year: all that its classes, its halls and its zone do not tell. */
export const yearPlanSchema = z
  .object({
    format: z.literal("hallful/year-plan@1").optional(),
    from: isoDate.optional(),
    until: isoDate.optional(),
    ...decided,
    halls: z.array(keptHallSchema).default([]).describe("by the ids of the practice's halls"),
    feed: z.string().nullable().default(null).describe("secret part of the address of her calendar, or none"),
  })
  .describe("A year as a practice keeps it: holidays, time off, when halls are closed, single changes.");

export type YearDocument = z.output<typeof yearDocumentSchema>;
export type YearDocumentInput = z.input<typeof yearDocumentSchema>;
export type YearPlan = z.output<typeof yearPlanSchema>;
export type DayListDocument = YearDocument["timeOff"];
export type BookedDocument = z.output<typeof bookedSchema>;
