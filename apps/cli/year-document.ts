import { yearMoneySchema } from "#core/cash";
import { yearDocumentSchema } from "#core/year";
import { z } from "zod";

/** A year as a file: its dates and its money, either of which may be left out. */
export const yearFileSchema = z
  .object({
    format: z.literal("hallful/year@1").optional(),
    calendar: yearDocumentSchema.optional(),
    money: yearMoneySchema
      .optional()
      .describe("work without dates that has the id of a class of the calendar takes its dates from there"),
  })
  .describe("A year: its real dates, and its money month by month.");

export type YearFile = z.output<typeof yearFileSchema>;
