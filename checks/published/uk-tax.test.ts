// United Kingdom, self-employed.
// 2025/26: profit 45,000 → income tax 6,486, Class 4 1,945.80; profit 40,000 → Class 4 1,645.80; profit 15,000,
//   25,000, 35,000 → income tax 486, 2,486, 4,486, Class 4 145.80, 745.80, 1,345.80: seen in public worked tables
//   for the self-employed of that year.
// 2026/27: Class 4 at 30,000 is 1,046 and at 75,000 2,757, in whole pounds: seen in a published guide to that year.
// Scotland 2026/27: income 16,000 → 651.70; 33,000 → 4,081.07: seen in a press report of 13 January 2026 on the
//   Scottish budget, which gives an accountants' analysis.
// Payments on account: gov.uk, “Understand your Self Assessment tax bill”, Payments on account: a bill of 3,000 for
//   2021/22 with two payments of 900 made → 2,700 by 31 January 2023, 1,500 on 31 July 2023 (seen). The same bill
//   with none made → 4,500 and 1,500 (seen in a published example for 2017/18).
// The taper of the allowance at 110,000 and the additional rate at 150,000: from memory, arithmetic shown.
import { moneyAnswer, type TaxJson } from "#core/cash";
import { describe, expect, test } from "vitest";

function yearOf(place: string, start: number, profit: number): TaxJson["years"][number] {
  const read = moneyAnswer({
    currency: "GBP",
    from: `${start}-04-06`,
    tax: { place },
    // costs of 1,000 are as good as the trading allowance, so that the profit is the one of the example
    moves: [
      { name: "takings", way: "in", amount: String(profit + 1000), on: `${start}-06-01` },
      { name: "costs", way: "out", amount: "1000", on: `${start}-06-02` },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const year = read.value.json.tax?.years[0];
  if (year === undefined) throw new Error("no tax year");
  expect(year.ownTable).toBe(true);
  return year;
}

describe("United Kingdom without Scotland", () => {
  test.each([
    [2025, 15_000, "486.00", "145.80"],
    [2025, 25_000, "2486.00", "745.80"],
    [2025, 35_000, "4486.00", "1345.80"],
    [2025, 40_000, "5486.00", "1645.80"],
    [2025, 45_000, "6486.00", "1945.80"],
    [2026, 45_000, "6486.00", "1945.80"],
    // allowance 12,570 − 5,000; 37,700 × 20 % + 64,730 × 40 %; 2,262 + 59,730 × 2 %
    [2026, 110_000, "33432.00", "3456.60"],
    // no allowance; 7,540 + 87,440 × 40 % + 24,860 × 45 %; 2,262 + 99,730 × 2 %
    [2025, 150_000, "53703.00", "4256.60"],
  ])("%i, profit %i: income tax %s, Class 4 %s", (start, profit, incomeTax, contribution) => {
    expect(yearOf("uk", start, profit)).toMatchObject({ incomeTax, contribution });
  });

  test.each([
    [30_000, 1046],
    [75_000, 2757],
  ])("2026/27, profit %i: Class 4 %i in whole pounds", (profit, pounds) => {
    expect(Math.round(Number(yearOf("uk", 2026, profit).contribution))).toBe(pounds);
  });
});

describe("Scotland", () => {
  test.each([
    [16_000, "651.70"],
    [33_000, "4081.07"],
  ])("2026/27, %i: income tax %s", (profit, incomeTax) => {
    expect(yearOf("scotland", 2026, profit)).toMatchObject({ incomeTax });
  });
});

describe("payments on account", () => {
  test.each([
    ["1800", "2700.00"],
    ["0", "4500.00"],
  ])("a bill of 3,000 with %s on account asks %s in January and 1,500 in July", (onAccount, january) => {
    const read = moneyAnswer({
      currency: "GBP",
      from: "2022-09-01",
      tax: { place: "uk", last: { bill: "3000", onAccount } },
      moves: [{ name: "takings", way: "in", amount: "100", on: "2022-10-01" }],
    });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const taxOf = (month: string) => read.value.json.months.find((it) => it.month === month)?.tax;
    expect(taxOf("2023-01")).toBe(january);
    expect(taxOf("2023-07")).toBe("1500.00");
  });
});
