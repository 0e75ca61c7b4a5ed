import { meansOfPaying, placeKinds } from "#core/roll";
import { currencyCodes, type Problem, readDate } from "#core/words";
import { z } from "zod";

/** What the record calls somebody or something; sessions are called after their class and date. */
export const idSchema = z
  .string()
  .regex(/^[a-z0-9][a-z0-9.-]{0,99}$/)
  .describe("small letters, digits, hyphens and dots, like tuesday.2026-12-01");

export const paidSchema = z
  .object({ amount: z.int().min(0).describe("whole minor units"), by: z.enum(meansOfPaying) })
  .nullable()
  .default(null);

/** How somebody takes a place: what she pays follows from it. */
export const howSchema = z.object({
  how: z.enum(placeKinds),
  pass: idSchema.nullable().default(null).describe("the pass or block it is taken out of"),
  paid: paidSchema.describe("what is paid at once"),
});

export type HowAsked = z.output<typeof howSchema>;

export const isoDateSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
export const instantSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?Z$/);
export const nameSchema = z.string().trim().min(1).max(200);
export const amountSchema = z.int().min(1).describe("whole minor units");

const codes: readonly string[] = currencyCodes();
export const currencySchema = z.enum(codes).describe("ISO 4217 code");

/** What is written into the books has a day of the calendar. Problem: "date-unreadable". */
export function dateProblem(on: string): Problem | null {
  const read = readDate(on, "on");
  return read.ok ? null : (read.problems[0] ?? null);
}
