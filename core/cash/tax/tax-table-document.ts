import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const isoDate = z.string().describe("YYYY-MM-DD");
const rate = z.number().describe("0.2 is a fifth");

const bands = z
  .array(z.object({ upTo: money.nullable(), rate }))
  .describe("of the taxable income, lowest first; the last goes up to null");

const heading = {
  id: z.string(),
  place: z.string().describe("uk, scotland, us, or a name of your own"),
  name: z.string(),
  currency: z.string(),
  from: isoDate,
  until: isoDate,
  sources: z.array(
    z.object({
      title: z.string(),
      mark: z.enum(["seen", "from memory", "own"]),
      note: z.string().default(""),
    }),
  ),
};

const ukTable = z.object({
  ...heading,
  rules: z.literal("uk"),
  allowance: z.object({ amount: money, taperFrom: money }).describe("one off for every two above"),
  bands,
  class4: z.object({ from: money, upTo: money, rate, above: rate }),
  class2: z.object({ aWeek: money, smallProfits: money }).describe("voluntary below the small profits"),
  tradingAllowance: money,
  onAccount: z.object({ from: money, atSource: rate }).describe("none asked below, or when more is taken"),
});

const usTable = z.object({
  ...heading,
  rules: z.literal("us"),
  selfEmployment: z.object({
    share: rate.describe("of the net profit that counts"),
    social: rate,
    socialUpTo: money.describe("together with wages"),
    medicare: rate,
    least: money.describe("nothing is due below"),
    deductible: rate.describe("share of this tax that comes off the income"),
    extra: z.object({ rate, single: money, joint: money }).describe("additional Medicare tax"),
  }),
  deduction: z.object({ single: money, joint: money }),
  bands: z.object({ single: bands, joint: bands }),
  instalmentsFrom: money.describe("no estimates are asked below"),
});

/** The rates of one tax year in one place, with where they come from. */
export const taxTableSchema = z.discriminatedUnion("rules", [ukTable, usTable]);

export type TaxTableDocument = z.output<typeof taxTableSchema>;
export type UkTableDocument = z.output<typeof ukTable>;
export type UsTableDocument = z.output<typeof usTable>;
