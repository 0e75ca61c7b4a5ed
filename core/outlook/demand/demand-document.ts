import { z } from "zod";
import { happenedSessionSchema } from "../happened/happened-document.ts";

const counts = z.array(z.number().nullable());

/** How many wanted to come, from how many came and how many places there were. */
export const demandDocumentSchema = z
  .object({
    format: z.literal("hallful/demand@1").optional(),
    capacity: z.number().optional().describe("places on an ordinary evening"),
    heads: z.array(z.number()).optional().describe("people on mats, session by session"),
    turnedAway: counts.optional().describe("who was turned away, all counted; null where nobody counted"),
    waiting: counts.optional().describe("who waited and got no place; null where there was no list"),
    sessions: z
      .array(happenedSessionSchema)
      .optional()
      .describe("the same as dated sessions, instead of heads"),
  })
  .describe("Heads and places of some sessions: how many wanted to come, and how many were turned away.");

export type DemandDocument = z.output<typeof demandDocumentSchema>;
export type DemandDocumentInput = z.input<typeof demandDocumentSchema>;
