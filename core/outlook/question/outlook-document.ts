import { z } from "zod";
import { happenedSessionSchema } from "../happened/happened-document.ts";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");

const rollSchema = z.object({
  newcomers: z.number().default(1).describe("new people in an ordinary week"),
  stays: z.number().default(0.4).describe("share of them who become regulars"),
  attends: z.number().default(0.65).describe("share of the sessions that a regular comes to"),
  leaves: z.number().default(0.02).describe("share of the regulars who stop each week"),
  alike: z
    .number()
    .nullable()
    .default(4)
    .describe("how alike regulars are in stopping, from 2; null: all the same"),
  luck: z
    .number()
    .default(0.15)
    .describe(
      "spread of a luck that all people of one evening share: 0.15 is 15 % more or fewer of them, 0 none",
    ),
  echo: z
    .number()
    .default(0.15)
    .describe("more newcomers at the second session for each who came to the opening; half at the third"),
});

const eveningSchema = z.object({
  expected: z.number().describe("people who are expected to come"),
  booked: z.number().optional().describe("people who have booked; only told"),
  hall: money.describe("what the hall charges for it"),
  hallPastNotice: z.boolean().default(true).describe("the hall is charged even if you cancel now"),
  cancelling: money.default("0").describe("what cancelling costs beyond the hall, as you feel it"),
});

/** A class and what has happened in it: what to expect, and what to do next. */
export const outlookDocumentSchema = z
  .object({
    format: z.literal("hallful/outlook@1").optional(),
    capacity: z.number().describe("places on an ordinary evening"),
    currency: z.string().optional().describe("ISO 4217 code of the amounts"),
    money: z
      .object({
        yield: money.describe("what one person on a mat brings on average; may have parts of a coin"),
        perHead: money.default("0").describe("what one person costs"),
        cost: money.describe("what a session costs whoever comes"),
      })
      .optional(),
    roll: rollSchema
      .prefault({})
      .describe("guesses about newcomers and regulars; the register corrects them"),
    regulars: z.number().default(0).describe("regulars who are known to be there before the first session"),
    startedBefore: z
      .boolean()
      .default(false)
      .describe("the class ran before the first session recorded, and nobody knows with how many regulars"),
    opening: z
      .number()
      .optional()
      .describe("people expected to the opening, where it is the first session ahead; of no use after it"),
    onRoll: z.number().optional().describe("a guess of those regulars, where the class ran before"),
    season: z
      .array(z.number())
      .optional()
      .describe("twelve numbers, January first, 1 is an ordinary month; a usual year unless told"),
    year: z
      .object({
        from: isoDate,
        until: isoDate,
        weekday: z.number().describe("1 is Monday, 7 is Sunday"),
        closures: z
          .array(z.object({ from: isoDate, until: isoDate, why: z.string().default("closed") }))
          .default([]),
      })
      .optional()
      .describe("the sessions ahead, week by week"),
    dates: z.array(isoDate).optional().describe("the sessions ahead, each by its date"),
    sessionsAhead: z.number().default(40).describe("how many, where no dates are given: ordinary weeks"),
    happened: z.array(happenedSessionSchema).default([]).describe("what really happened"),
    notice: z
      .object({
        days: z.number().default(28).describe("from giving notice to the hall until it takes effect"),
        dates: z.array(isoDate).default([]).describe("days on which it can be given; any day unless told"),
        term: z.number().default(12).describe("sessions of the term after it"),
        otherUse: money.default("0").describe("what the best other use of the slot leaves a session"),
        exitCost: money.default("0").describe("what ending costs: refunds owed, a deposit lost"),
      })
      .optional(),
    full: z
      .object({
        extraMats: z.number().default(0).describe("mats that a tighter plan would add"),
        absences: z.number().default(0).describe("paid places known to stay empty each session"),
        rise: money.default("0").describe("a small rise of what one person brings"),
        riseLoses: z.number().default(0.05).describe("share of the people who would go for it"),
        biggerHall: z.object({ capacity: z.number(), extraCost: money }).optional(),
        secondClass: z
          .object({
            cost: money.describe("what a session of it costs"),
            shareWhoWouldCome: z.number().default(0.5).describe("of those turned away, who would come then"),
            ownPeople: z.number().default(0).describe("people a session who could only come then"),
          })
          .optional(),
      })
      .optional()
      .describe("what might be done about full evenings"),
    tonight: eveningSchema
      .extend({ avoidable: money.default("0").describe("travel and your own evening, if you run it") })
      .optional(),
    cover: eveningSchema.extend({ fee: money.describe("of the teacher who would cover") }).optional(),
    seed: z.number().default(1).describe("of the random draws; the same seed gives the same answer"),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("A class, its guesses and its register: what is to be expected of it, and what to do next.");

export type OutlookDocument = z.output<typeof outlookDocumentSchema>;
export type OutlookDocumentInput = z.input<typeof outlookDocumentSchema>;
