import * as fc from "fast-check";
import { expect, test } from "vitest";
import { moneyAnswer } from "../index.ts";

function ukRate(taxed: number, scotland: boolean): number {
  if (!scotland) return taxed < 37_700 ? 0.2 : taxed < 125_140 ? 0.4 : 0.45;
  if (taxed < 31_092) return taxed < 3967 ? 0.19 : taxed < 16_956 ? 0.2 : 0.21;
  if (taxed < 125_140) return taxed < 62_430 ? 0.42 : 0.45;
  return 0.48;
}

function ukTaxPlain(income: number, scotland: boolean): number {
  const allowance = Math.max(0, 12_570 - Math.floor(Math.max(0, income - 100_000) / 2));
  let sum = 0;
  for (let pound = 0; pound < income - allowance; pound += 1) sum += ukRate(pound, scotland);
  return sum;
}

/** Pound by pound in floating figures typed in here again, so that neither the tables nor the walk are shared. */
function ukPlain(profit: number, other: number, scotland: boolean): number {
  let class4 = 0;
  for (let pound = 0; pound < profit; pound += 1) class4 += pound < 12_570 ? 0 : pound < 50_270 ? 0.06 : 0.02;
  return ukTaxPlain(profit + other, scotland) - ukTaxPlain(other, scotland) + class4;
}

function federalRate(dollar: number): number {
  if (dollar < 50_400) return dollar < 12_400 ? 0.1 : 0.12;
  if (dollar < 201_775) return dollar < 105_700 ? 0.22 : 0.24;
  return dollar < 256_225 ? 0.32 : 0.35;
}

function federalPlain(income: number): number {
  let sum = 0;
  // what is left over of a last dollar counts as a whole one
  for (let dollar = 0; dollar < income - 16_100; dollar += 1) sum += federalRate(dollar);
  return sum;
}

function usPlain(net: number, wages: number): number {
  const counts = net * 0.9235;
  const work = counts < 400 ? 0 : Math.min(counts, Math.max(0, 184_500 - wages)) * 0.124 + counts * 0.029;
  const extra = Math.max(0, counts - Math.max(0, 200_000 - wages)) * 0.009;
  return federalPlain(wages + net - work / 2) - federalPlain(wages) + work + extra;
}

function billOf(place: string, currency: string, from: string, profit: number, other: number): number {
  const read = moneyAnswer({
    currency,
    from,
    tax: { place, other: String(other) },
    // costs of 1,000 are as good as the trading allowance
    moves: [
      { name: "in", way: "in", amount: String(profit + 1000), on: from },
      { name: "out", way: "out", amount: "1000", on: from },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return Number(read.value.json.tax?.years[0]?.bill);
}

const income = fc.oneof(fc.integer({ min: 0, max: 60_000 }), fc.integer({ min: 60_000, max: 240_000 }));

test("CASH-22: a count pound by pound finds the same United Kingdom and Scottish bills", () => {
  fc.assert(
    fc.property(income, income, fc.boolean(), (profit, other, scotland) => {
      const bill = billOf(scotland ? "scotland" : "uk", "GBP", "2026-04-06", profit, other);
      expect(Math.abs(bill - ukPlain(profit, other, scotland))).toBeLessThan(0.01);
    }),
    { numRuns: 60 },
  );
});

test("CASH-24: a count dollar by dollar finds the same federal bill, to the last dollar's rate", () => {
  fc.assert(
    fc.property(income, income, (net, wages) => {
      const bill = billOf("us", "USD", "2026-01-01", net, wages);
      expect(Math.abs(bill - usPlain(net, wages))).toBeLessThan(0.4);
    }),
    { numRuns: 60 },
  );
});
