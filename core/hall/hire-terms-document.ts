import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");
const factor = z.number().describe("1 is unchanged, 0.5 is half");
const isoDate = z.string().describe("YYYY-MM-DD");

/** What a hall charges, as it is written to a file. Exactly one of perHour and perSession. */
export const hireTermsSchema = z.object({
  perHour: money.optional(),
  perSession: money.optional(),
  minimumMinutes: minutes.default(0),
  incrementMinutes: minutes.default(1),
  freeBeforeMinutes: minutes.default(0).describe("set-up minutes that the hall does not charge"),
  freeAfterMinutes: minutes.default(0).describe("pack-down minutes that the hall does not charge"),
  heating: z.object({ perHour: money, months: z.array(z.number()).describe("1 is January") }).optional(),
  setUpFactor: factor.optional().describe("share of the rate at which charged set-up minutes are billed"),
  weekendFactor: factor.optional().describe("multiplies the rate on Saturday and Sunday"),
  bands: z
    .array(z.object({ fromHoursPerYear: z.number(), factor }))
    .optional()
    .describe("volume bands: from that many hours a year the rate is multiplied by the factor"),
  hoursPerYear: z.number().optional().describe("hours a year she hires there, for the bands"),
  rates: z
    .array(z.object({ from: isoDate, perHour: money.optional(), perSession: money.optional() }))
    .optional()
    .describe("a new rate from its date"),
});

export type HireTermsDocument = z.output<typeof hireTermsSchema>;
