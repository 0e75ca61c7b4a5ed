import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');

/** A free first class, or a first paid one: how many may say yes before the list is closed. */
export const openingDocumentSchema = z
  .object({
    format: z.literal("hallful/opening@1").optional(),
    mats: z.number().describe("mats that the plan holds"),
    ownCap: z.number().optional().describe("the most people you want"),
    insurerCap: z.number().optional().describe("the most people your insurer covers"),
    postedCapacity: z.number().optional().describe("the number the hall posts, everybody counted"),
    notOnMats: z.number().default(1).describe("people in the room who need no mat: you, a helper"),
    turnUp: z.number().describe("share of those accepted who come, between 0 and 1"),
    pairs: z
      .union([z.boolean(), z.number()])
      .default(false)
      .describe(
        "true: several come in pairs; a number below 1: how alike any two are (a correlation); a whole number: so many pairs are known",
      ),
    risk: z.number().default(0.05).describe("how often more people than room may come, between 0 and 1"),
    paid: z.boolean().default(false).describe("paid places are never accepted beyond the room"),
    currency: z.string().optional().describe("ISO 4217 code of the amounts"),
    costs: z
      .object({
        turnedAway: money.describe("what sending one person home costs you, as you feel it"),
        emptyMat: money.describe("what one mat left empty costs you"),
      })
      .optional(),
    happened: z
      .object({
        accepted: z.number(),
        came: z.number(),
        returned: z.number().optional().describe("of those who came, how many came again"),
      })
      .optional()
      .describe("what really happened, once it has"),
    returns: z.number().default(0.5).describe("share of those who come that you expect again"),
    stayer: z
      .object({
        yield: money.describe("what one person brings each time"),
        perHead: money.default("0").describe("what one person costs each time"),
        attendance: z.number().default(0.65).describe("share of the sessions she comes to"),
        leaving: z.number().default(0.02).describe("share of the regulars who stop each week"),
        sessions: z.number().default(40).describe("teaching weeks looked ahead"),
      })
      .optional()
      .describe("for the worth of one person who stays"),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("An opening: the mats, how many of those accepted come, and the risk of too many.");

export type OpeningDocument = z.output<typeof openingDocumentSchema>;
export type OpeningDocumentInput = z.input<typeof openingDocumentSchema>;
