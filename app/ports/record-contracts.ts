import { z } from "zod";
import { actors, type KeptStream } from "./record.ts";

const instant = z.string().describe("ISO 8601 instant, UTC");

/** POST …/record. What is to be done is read by the record itself, whose problems are the ones to show. */
export const actContract = z.object({
  action: z.string().describe("an id made by whoever asks; the same action twice is done once"),
  by: z.enum(actors).default("teacher"),
  locale: z.enum(["en-GB", "en-US"]).default("en-GB"),
  device: z
    .object({ made: instant, sent: instant })
    .optional()
    .describe("by the clock of the device that was used, when it was done and when it was sent"),
  do: z.unknown().describe("one of the doings, by its kind"),
});
export type ActAsk = z.input<typeof actContract>;

export const toldContract = z.object({
  says: z.array(z.string()).readonly(),
  outcome: z.string().optional(),
});

const keptStream = z.object({
  stream: z.string(),
  number: z.number(),
  belongs: z.string(),
  sort: z.string(),
  state: z.unknown(),
});

/** GET …/record/evenings, …/record/people and …/record/passes */
export const streamsContract = z.object({ streams: z.array(keptStream).readonly() });
export type StreamsAnswer = { readonly streams: readonly KeptStream[] };

/** GET …/record/postings */
export const postingsContract = z.object({
  postings: z
    .array(
      z.object({
        action: z.string(),
        line: z.number(),
        date: z.string(),
        account: z.string(),
        commodity: z.string(),
        amount: z.number(),
        about: z.string(),
      }),
    )
    .readonly(),
});

/** GET …/record/balances */
export const balancesContract = z.object({
  balances: z.array(z.object({ account: z.string(), commodity: z.string(), amount: z.number() })).readonly(),
});

/** GET …/record/people/:person/note */
export const noteContract = z.object({ note: z.string().nullable() });
