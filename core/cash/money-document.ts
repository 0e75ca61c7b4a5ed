import { z } from "zod";
import { taxTableSchema } from "./tax/tax-table-document.ts";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");

export const workKinds = ["own", "studio", "gym", "cover", "private", "corporate", "workshop"] as const;
export const paidWhens = ["on-the-day", "days-after", "after-month", "before-month"] as const;

const amount = z
  .union([money, z.object({ low: money.optional(), middle: money, high: money.optional() })])
  .describe("one figure, or a band: eight chances of ten lie between low and high");

const paid = z
  .object({
    when: z
      .enum(paidWhens)
      .describe("after-month: so many days after the month's last; before-month: so many before its first"),
    days: z.number().default(0),
  })
  .describe("when the money moves");

const workSchema = z.object({
  id: z.string(),
  name: z.string().optional(),
  kind: z.enum(workKinds),
  dates: z.array(isoDate).optional().describe("every session, those before `from` that are not paid yet too"),
  weekly: z
    .object({
      weekday: z.number().describe("1 is Monday, 7 is Sunday"),
      from: isoDate,
      until: isoDate,
      off: z.array(isoDate).default([]).describe("dates without a session"),
    })
    .optional()
    .describe("in place of dates"),
  perSession: amount.describe("takings or pay of a session, by what is taught, not by what is paid that day"),
  changes: z
    .array(z.object({ from: isoDate, perSession: amount }))
    .default([])
    .describe("what a session brings from that day on, as a class grows"),
  passes: z
    .object({
      share: z.number().describe("of the takings that passes or blocks have paid, between 0 and 1"),
      sessions: z.number().describe("so many sessions are sold at a time"),
      owed: money.default("0").describe("what is sold and not yet taught when it begins"),
    })
    .optional(),
  paid: paid
    .optional()
    .describe(
      "not stated: own classes, workshops and private ones on the day, the others 30 days after month's end",
    ),
  costs: z
    .array(
      z.object({
        name: z.string(),
        perSession: money,
        paid: paid.optional().describe("not stated: on the day"),
        business: z.boolean().default(true).describe("it may be set against tax"),
      }),
    )
    .default([]),
});

const moveSchema = z.object({
  id: z.string().optional(),
  name: z.string(),
  way: z.enum(["in", "out"]),
  amount,
  on: isoDate.describe("the first date"),
  everyMonths: z.number().optional().describe("1 for monthly, 3 for quarterly, 12 for yearly"),
  until: isoDate.optional(),
  business: z
    .boolean()
    .default(true)
    .describe("it counts for tax; false for what she lives on and the pay of a job that is taxed already"),
});

const taxSchema = z.object({
  place: z.string().describe("uk, scotland, us, or the place of a table of your own"),
  filing: z.enum(["single", "joint"]).default("single").describe("United States"),
  other: money
    .default("0")
    .describe("other income a year before tax, like a job; of both where filing jointly"),
  atSource: money.optional().describe("tax already taken off it a year; not stated: what the table takes"),
  stateRate: z.number().default(0).describe("United States: of the profit, 0.05 is a twentieth"),
  registered: z.boolean().default(false).describe("United Kingdom: for self assessment"),
  soFar: z
    .object({ income: money.default("0"), costs: money.default("0") })
    .default({ income: "0", costs: "0" })
    .describe("of the tax year in which it begins, before it begins"),
  paidSoFar: money.default("0").describe("United States: paid towards that year before it begins"),
  last: z
    .object({
      bill: money,
      onAccount: money.default("0").describe("asked on account towards it, both halves together"),
    })
    .optional()
    .describe("the whole bill of the tax year before that; not stated: there was none"),
  pot: money.optional().describe("what lies in the tax pot when it begins, as a part of the opening balance"),
  tables: z
    .array(taxTableSchema)
    .default([])
    .describe("rates of your own, in place of those that come with it"),
});

const pathSchema = z.object({
  need: money.describe("a month, before tax"),
  level: z.number().default(0.8).describe("how sure to be, between 0.5 and 0.99"),
  window: z.number().default(3).describe("months over which a thin one may be made up"),
  together: z
    .number()
    .default(0.3)
    .describe("how much the uncertain classes rise and fall together: 0 not at all, 1 as one"),
  mayDrop: z.array(
    z.object({
      id: z.string().describe("of the work"),
      hours: z.number().default(1).describe("from door to door, for each session"),
      noticeWeeks: z.number().default(4),
    }),
  ),
});

/** The money of a year: what is taught and how it is paid, what else comes and goes, tax, and the path. */
export const yearMoneySchema = z
  .object({
    format: z.literal("hallful/money@1").optional(),
    currency: z.string().describe("ISO 4217 code of all amounts"),
    from: isoDate.describe("the first day"),
    months: z.number().default(12).describe("1 to 36"),
    opening: money.default("0").describe("what is in the bank that morning; may be below nought"),
    work: z.array(workSchema).default([]),
    moves: z.array(moveSchema).default([]).describe("insurance, data fee, training, living, a job's pay"),
    tax: taxSchema.optional(),
    path: pathSchema.optional(),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe(
    "The money of a year: when it comes and goes, what tax takes of it, and when studio work can go.",
  );

export type YearMoneyDocument = z.output<typeof yearMoneySchema>;
export type YearMoneyDocumentInput = z.input<typeof yearMoneySchema>;
