// United States, federal.
// Schedule SE: net 20,000 → 18,470 → 2,825.91 (seen; computed). 2025: net 50,000 → 46,175 → 7,064.78 (seen in a tax
//   adviser's public answer). 2026: net 80,000 → 73,880 → 11,304 of which social 9,161 and Medicare 2,143, half
//   5,652, in whole dollars (seen in a published worked example).
// Estimates for 2025: 15 April, 16 June, 15 September 2025, 15 January 2026 (seen in the same answer).
// Brackets and standard deduction 2026: IRS IR-2025-103, Revenue Procedure 2025-32, as reported (seen); 2025: as
//   published by a firm of accountants, with the standard deduction of the July 2025 law (seen). Taxes at the ends of
//   brackets are computed here by hand from these.
import { moneyAnswer, type MoneyJson } from "#core/cash";
import { describe, expect, test } from "vitest";

type Filing = "single" | "joint";

function answer(start: number, net: number, filing: Filing = "single", other = 0): MoneyJson {
  const read = moneyAnswer({
    currency: "USD",
    from: `${start}-01-01`,
    tax: { place: "us", filing, other: String(other) },
    moves: [{ name: "takings", way: "in", amount: String(net), on: `${start}-03-01` }],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.value.json.tax?.years[0]?.ownTable).toBe(true);
  return read.value.json;
}

const first = (json: MoneyJson) => json.tax?.years[0];

describe("Schedule SE", () => {
  test.each([
    [2025, 20_000, "2825.91"],
    [2026, 20_000, "2825.91"],
    [2025, 50_000, "7064.78"],
  ])("%i, net %i: %s", (year, net, contribution) => {
    expect(first(answer(year, net))?.contribution).toBe(contribution);
  });

  test("2026, net 80,000: 11,304, and half of it, 5,652, comes off the income", () => {
    const json = answer(2026, 80_000);
    expect(Math.round(Number(first(json)?.contribution))).toBe(11_304);
    const half = json.working.find(({ label }) => label === "half the self-employment tax");
    expect(Math.round(-Number(half?.amount))).toBe(5652);
  });
});

test("estimates for 2025 fall on 15 April, 16 June, 15 September and 15 January", () => {
  expect(answer(2025, 50_000).tax?.dates.map(({ date }) => date)).toEqual([
    "2025-04-15",
    "2025-06-16",
    "2025-09-15",
    "2026-01-15",
  ]);
});

describe("income tax at the ends of brackets", () => {
  // other income fills the brackets exactly; without a profit nothing is due but what is withheld on it
  test.each<readonly [number, Filing, number, number]>([
    // 15,750 + 48,475: 1,192.50 + 36,550 × 12 %
    [2025, "single", 64_225, 5578.5],
    // 31,500 + 96,950: 2,385 + 73,100 × 12 %
    [2025, "joint", 128_450, 11_157],
    // 16,100 + 50,400: 1,240 + 38,000 × 12 %
    [2026, "single", 66_500, 5800],
    // 16,100 + 105,700: 5,800 + 55,300 × 22 %
    [2026, "single", 121_800, 17_966],
    // 32,200 + 100,800: 2,480 + 76,000 × 12 %
    [2026, "joint", 133_000, 11_600],
    // 16,100 + 640,600: 17,966 + 96,075 × 24 % + 54,450 × 32 % + 384,375 × 35 %
    [2026, "single", 656_700, 192_979.25],
  ])("%i, %s, income %i: %f", (year, filing, income, tax) => {
    const read = moneyAnswer({
      currency: "USD",
      from: `${year}-01-01`,
      tax: { place: "us", filing, other: String(income), atSource: "0" },
      moves: [{ name: "costs", way: "out", amount: "0", on: `${year}-03-01` }],
    });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(Number(read.value.json.tax?.years[0]?.bill)).toBe(tax);
  });
});
