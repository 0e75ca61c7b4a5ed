import { z } from "zod";

const isoDate = z.string().describe("YYYY-MM-DD");

/** One dated meeting of a class, as it was. */
export const happenedSessionSchema = z.object({
  date: isoDate,
  heads: z.number().default(0).describe("people on mats"),
  capacity: z.number().optional().describe("places that evening, where they differ from the usual"),
  turnedAway: z.number().optional().describe("people who were told that it was full, all of them counted"),
  waiting: z.number().optional().describe("people on the waiting list who got no place"),
  newcomers: z.number().optional().describe("of the people on mats, who was there for the first time"),
  cancelled: z.boolean().optional().describe("true when it did not take place"),
});

/** What really happened: the sessions of one class, from the register or from memory. */
export const happenedSchema = z
  .object({
    format: z.literal("hallful/happened@1").optional(),
    capacity: z.number().optional().describe("places on an ordinary evening"),
    sessions: z.array(happenedSessionSchema),
  })
  .describe("What really happened: dated sessions with heads, places, who was turned away, newcomers.");

export type HappenedDocument = z.output<typeof happenedSchema>;
export type HappenedDocumentInput = z.input<typeof happenedSchema>;
export type HappenedSessionDocument = z.output<typeof happenedSessionSchema>;
