import { z } from "zod";

const day = z.string().describe("ISO date, local to the hall");
const instant = z.string().describe("ISO 8601 instant, UTC");
const amount = z.string().describe('decimal string, like "12.50"; below nought for what went back');

const place = z.object({
  session: z.string(),
  name: z.string().describe("of the class, as it was called then"),
  date: day,
  how: z.string().describe("single, pass, block, concession, free or guest"),
  state: z.string().describe("held, attended, given up early, given up late or not come"),
  letGo: z.boolean().describe("a lateness that was not charged"),
  price: amount,
  currency: z.string(),
  pass: z.string().nullable(),
});

const pass = z.object({
  pass: z.string(),
  form: z.enum(["pass", "block"]),
  name: z.string(),
  soldOn: day,
  size: z.number(),
  price: amount,
  currency: z.string(),
  left: z.number(),
  useBy: day,
  stillToPay: amount,
  pausedFrom: day.nullable(),
  usedOn: z.array(day).readonly(),
});

const payment = z.object({
  on: day,
  what: z.string().describe("the class or the pass that it was for"),
  amount,
  currency: z.string(),
  by: z.string().describe("cash, card or bank"),
});

/**
 * Everything that is kept about one person, as a file to hand over: "hallful/person@1". Accident records are kept
 * apart, by the name that was given then, and are not part of it.
 */
export const personExportContract = z.object({
  format: z.literal("hallful/person@1"),
  written: instant,
  person: z.string(),
  since: instant,
  contact: z.record(z.string(), z.string()),
  consents: z
    .array(z.object({ to: z.string(), given: z.boolean(), at: instant, wording: z.string() }))
    .readonly()
    .describe("every answer that was given, the newest of each kind last"),
  healthForm: z
    .object({
      at: instant,
      reviewBy: day,
      speakFirst: z.boolean(),
      note: z
        .object({ opened: z.boolean(), text: z.string().nullable() })
        .describe("opened only when that was asked for"),
    })
    .nullable(),
  late: z.object({ times: z.number(), letGo: z.number() }),
  mayCover: z
    .object({ insuredUntil: day.nullable(), styles: z.string(), fee: z.number().describe("minor units") })
    .nullable(),
  places: z.array(place).readonly(),
  waiting: z.array(z.object({ session: z.string(), name: z.string(), date: day })).readonly(),
  covered: z.array(z.object({ session: z.string(), name: z.string(), date: day })).readonly(),
  passes: z.array(pass).readonly(),
  payments: z.array(payment).readonly(),
});
export type PersonExport = z.output<typeof personExportContract>;

/** GET …/record/people/seen: when each was last at a session, and how often in that stretch of time. */
export const seenContract = z.object({
  seen: z.array(z.object({ person: z.string(), last: day, times: z.number() })).readonly(),
});
export type SeenAnswer = z.output<typeof seenContract>;
