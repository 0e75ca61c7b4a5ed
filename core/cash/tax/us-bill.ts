import { exactNumber, roundToMinor } from "#core/words";
import { Fraction } from "fraction.js";
import { bandTax, bandWalk } from "./band-walk.ts";
import type { BillLine, TaxBill } from "./tax-bill.ts";
import type { Filing, TaxQuestion, TradingYear, UsTable } from "./tax-types.ts";
import { partLines } from "./uk-bill.ts";

/**
 * What a year of trade adds to her federal tax, with one rate for the state: income tax on all income less the
 * standard deduction and half the self-employment tax, less what was withheld; and self-employment tax.
 * The deduction for business income (section 199A) and credits are left out: the estimate is on the high side.
 */
export function usBill(table: UsTable, question: TaxQuestion, trading: TradingYear): TaxBill {
  const { other, filing, stateRate } = question;
  const net = trading.income - trading.costs;
  const profit = Math.max(0, net);
  const work = selfEmploymentTax(table, profit, other, filing);
  const income = Math.max(0, other + net - work.off);
  const all = federalTax(table, income, filing);
  const taken = question.atSource ?? federalTax(table, other, filing).tax;
  const state = roundToMinor(exactNumber(profit).mul(stateRate));
  const bill = all.tax + work.tax + state - taken;
  const whole = all.tax + work.tax + state;
  return {
    profit,
    method: null,
    incomeTax: all.tax - taken,
    contribution: work.tax,
    state,
    atSource: taken,
    bill,
    atSourceShare: whole === 0 ? new Fraction(0) : exactNumber(Math.min(taken, whole)).div(whole),
    class2: null,
    lines: [
      { label: "received", coins: trading.income },
      { label: "costs paid", coins: -trading.costs },
      { label: net < 0 ? "net profit, a loss" : "net profit", coins: net, total: true },
      ...work.lines,
      ...(other === 0 ? [] : [{ label: "other income", coins: other }]),
      ...(work.off === 0 ? [] : [{ label: "half the self-employment tax", coins: -work.off }]),
      { label: "standard deduction", coins: -Math.min(table.deduction[filing], income) },
      { label: "taxed", coins: all.taxable, total: true },
      ...partLines("federal income tax", all.parts),
      { label: "self-employment tax", coins: work.tax },
      ...(state === 0 ? [] : [{ label: "the state", coins: state, of: { coins: profit, rate: stateRate } }]),
      ...(taken === 0 ? [] : [{ label: "withheld", coins: -taken }]),
      { label: "the bill", coins: bill, total: true },
    ],
  };
}

function federalTax(table: UsTable, income: number, filing: Filing) {
  const taxable = Math.max(0, income - table.deduction[filing]);
  const parts = bandWalk(taxable, table.bands[filing]);
  return { taxable, parts, tax: bandTax(parts) };
}

type WorkTax = { readonly tax: number; readonly off: number; readonly lines: readonly BillLine[] };

/** Schedule SE: what counts is 92.35 % of the net; the social part stops where wages and it reach the base. */
function selfEmploymentTax(table: UsTable, profit: number, wages: number, filing: Filing): WorkTax {
  const { share, social, socialUpTo, medicare, least, deductible, extra } = table.selfEmployment;
  const counts = roundToMinor(exactNumber(profit).mul(share));
  if (counts < least) return { tax: 0, off: 0, lines: [] };
  // filing jointly the other income may be the husband's or wife's, whose wages do not fill her base
  const filled = filing === "single" ? wages : 0;
  const underBase = Math.min(counts, Math.max(0, socialUpTo - filled));
  const ordinary = roundToMinor(exactNumber(underBase).mul(social).add(exactNumber(counts).mul(medicare)));
  const above = Math.max(0, counts - Math.max(0, extra[filing] - wages));
  const more = roundToMinor(exactNumber(above).mul(extra.rate));
  return {
    tax: ordinary + more,
    off: roundToMinor(exactNumber(ordinary).mul(deductible)),
    lines: [
      { label: "counts for self-employment tax", coins: counts, of: { coins: profit, rate: share } },
      ...(underBase === counts
        ? [
            {
              label: "self-employment tax",
              coins: ordinary,
              of: { coins: counts, rate: social.add(medicare) },
            },
          ]
        : [
            { label: "self-employment tax, the social part up to its limit", coins: underBase },
            { label: "self-employment tax", coins: ordinary },
          ]),
      ...(more === 0
        ? []
        : [{ label: "additional Medicare", coins: more, of: { coins: above, rate: extra.rate } }]),
    ],
  };
}
