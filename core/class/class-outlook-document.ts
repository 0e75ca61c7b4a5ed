import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");
const share = z.number().optional();

const openingSchema = z.object({
  turnUp: share.describe("share of those accepted who come, between 0 and 1"),
  pairs: z
    .union([z.boolean(), z.number()])
    .optional()
    .describe(
      "true: several come in pairs; a number below 1: how alike any two are; a whole number: so many pairs",
    ),
  risk: share.describe("how often more people than room may come"),
  paid: z.boolean().optional().describe("paid places are never accepted beyond the room"),
  costs: z.object({ turnedAway: money, emptyMat: money }).optional(),
  happened: z
    .object({ accepted: z.number(), came: z.number(), returned: z.number().optional() })
    .optional()
    .describe("what really happened, once it has"),
  returns: share.describe("share of those who come that are expected again"),
});

const fullSchema = z.object({
  extraMats: z.number().optional().describe("mats that a tighter plan would add"),
  absences: z.number().optional().describe("paid places known to stay empty each session"),
  rise: money.optional().describe("a small rise of what one person brings"),
  riseLoses: share.describe("share of the people who would go for it"),
  biggerHall: z.object({ capacity: z.number(), extraCost: money }).optional(),
  secondClass: z.object({ cost: money, shareWhoWouldCome: z.number(), ownPeople: z.number() }).optional(),
});

/** What is guessed of a class's future. All of it may be left out: then usual figures stand in as guesses. */
export const classOutlookSchema = z.object({
  roll: z
    .object({
      newcomers: z.number().optional().describe("new people in an ordinary week"),
      stays: share.describe("share of them who become regulars"),
      attends: share.describe("share of the sessions that a regular comes to"),
      leaves: share.describe("share of the regulars who stop each week"),
      luck: share.describe("spread of a luck that all people of one evening share, like rain"),
    })
    .optional(),
  regulars: z.number().optional().describe("regulars who are known to be there before the first session"),
  startedBefore: z.boolean().optional().describe("the class ran before the first session recorded"),
  season: z.array(z.number()).optional().describe("twelve numbers, January first, 1 is an ordinary month"),
  notice: z
    .object({
      days: z.number().optional().describe("from giving notice to the hall until it takes effect"),
      dates: z.array(isoDate).optional().describe("days on which it can be given; any day unless told"),
      term: z.number().optional().describe("sessions of the term after it"),
      otherUse: money.optional().describe("what the best other use of the slot leaves a session"),
      exitCost: money.optional().describe("what ending costs: refunds owed, a deposit lost"),
    })
    .optional(),
  opening: openingSchema.optional(),
  full: fullSchema.optional().describe("what might be done about full evenings"),
  evening: z
    .object({
      expected: z.number().optional().describe("people expected; not stated: as the record foretells"),
      booked: z.number().optional(),
      hallPastNotice: z.boolean().optional().describe("the hall is charged even if she cancels now"),
      avoidable: money.optional().describe("travel and her own evening, if she runs it"),
      cancelling: money.optional().describe("what cancelling costs beyond the hall, as she feels it"),
      fee: money.optional().describe("of the teacher who would cover"),
    })
    .optional()
    .describe("the next session: run it, have it covered, or cancel"),
});

export type ClassOutlook = z.output<typeof classOutlookSchema>;
