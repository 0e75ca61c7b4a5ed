import { branded, type CurrencyCode } from "#core/words";
import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { type DemandCurve, fitCurves, headsAt, type PricePoint } from "./demand-curve.ts";
import { agreedRange, priceAt, priceCurve, type PriceSetting, pricesLookedAt } from "./price-curve.ts";
import { readSurvey, type SurveyDocument, surveySummary } from "./read-survey.ts";

const GBP = branded<CurrencyCode>("GBP");

function curves(points: readonly PricePoint[]): readonly DemandCurve[] {
  const found = fitCurves(points, "beliefs");
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

test("PRICE-50 two beliefs lie on both curves", () => {
  // at 8.00 she would get 16, at 12.00 10: ln(10/16) ÷ ln(12/8) = −1.159; (10 − 16) ÷ 4.00 = −1.5 a pound
  const [elastic, linear] = curves([
    { price: 800, heads: 16 },
    { price: 1200, heads: 10 },
  ]);
  if (elastic?.kind !== "constant elasticity" || linear?.kind !== "linear") throw new Error("kinds");
  expect(elastic.elasticity).toBeCloseTo(-1.1592, 4);
  expect(linear.slope * 100).toBeCloseTo(-1.5, 12);
  for (const curve of [elastic, linear]) {
    expect(headsAt(curve, 800)).toBeCloseTo(16, 9);
    expect(headsAt(curve, 1200)).toBeCloseTo(10, 9);
  }
  // the straight line ends at 18.67, the other never does
  expect(headsAt(linear, 2000)).toBe(0);
  expect(headsAt(elastic, 2000)).toBeGreaterThan(5);
});

test("PRICE-50 three beliefs are met by least squares", () => {
  // x −1 0 1 about 9.00, y 12 11 7: slope (7 − 12) ÷ 2 = −2.5 a pound, level 10 at 9.00
  const [, linear] = curves([
    { price: 800, heads: 12 },
    { price: 900, heads: 11 },
    { price: 1000, heads: 7 },
  ]);
  if (linear?.kind !== "linear") throw new Error("kind");
  expect(linear.slope).toBeCloseTo(-0.025, 12);
  expect(headsAt(linear, 900)).toBeCloseTo(10, 12);
});

function codes(points: readonly PricePoint[]): readonly string[] {
  const found = fitCurves(points, "beliefs");
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-50 a curve so steep that a low price would draw the whole world ends at a million", () => {
  // 20 at 0.41 and 0.2 at 0.42: elasticity −191, and at 0.20 some 10^61 people
  const [elastic] = curves([
    { price: 41, heads: 20 },
    { price: 42, heads: 0.2 },
  ]);
  if (elastic === undefined) throw new Error("no curve");
  expect(headsAt(elastic, 41)).toBeCloseTo(20, 6);
  expect(headsAt(elastic, 20)).toBe(1e6);
});

test("PRICE-51 one price, or more people at a higher price, gives no curve and says what to change", () => {
  expect(codes([])).toEqual(["curve-one-point at beliefs"]);
  expect(
    codes([
      { price: 800, heads: 16 },
      { price: 800, heads: 12 },
    ]),
  ).toEqual(["curve-one-point at beliefs"]);
  expect(
    codes([
      { price: 800, heads: 10 },
      { price: 1200, heads: 16 },
    ]),
  ).toEqual(["curve-slopes-upward at beliefs"]);
  expect(
    codes([
      { price: 800, heads: 10 },
      { price: 1200, heads: 10 },
    ]),
  ).toEqual(["curve-slopes-upward at beliefs"]);
});

const setting: PriceSetting = {
  capacity: 1000,
  dispersion: 1,
  perHead: 0,
  cost: 0,
  collected: 1,
  from: 100,
  until: 2000,
};

test("PRICE-52 on a straight line with room enough the best price is half way to nobody", () => {
  // 28 − 1.4 p has nobody at 20.00: best 10.00, 14 people, 140.00; 5 % less where (p − 10)² × 1.4 = 7: ±2.236
  const found = priceCurve({ kind: "linear", level: 28, slope: -0.014 }, setting);
  expect(found.best.price).toBe(1000);
  expect(found.best.contribution).toBeCloseTo(14_000, 4);
  // in steps of 0.20 the prices within 2.236 of 10.00
  expect(found.range).toEqual({ from: 780, until: 1220 });
  expect(found.atEdge).toBeNull();
});

test("PRICE-52 with elasticity −2 and 3.00 a head the best price is twice that", () => {
  // (p − v) p^−2 is greatest at p = 2v
  const found = priceCurve(
    { kind: "constant elasticity", level: Math.log(8e6), elasticity: -2 },
    { ...setting, perHead: 300 },
  );
  expect(found.best.price).toBe(600);
});

test("PRICE-52 a hall that is full moves the best price up to where it empties a little", () => {
  const curve: DemandCurve = { kind: "linear", level: 28, slope: -0.014 };
  const small = priceCurve(curve, { ...setting, capacity: 8 });
  // with 8 places the price for which 8 would like to come is 14.29
  expect(small.best.price).toBeGreaterThan(1300);
  expect(small.best.price).toBeLessThan(1500);
  expect(small.best.heads).toBeLessThan(8);
});

test("PRICE-52 what a mix collects and what heads cost count", () => {
  const at = priceAt({ kind: "linear", level: 20, slope: -0.01 }, 1000, {
    ...setting,
    collected: 0.9,
    perHead: 20,
    cost: 3140,
  });
  // 10 people, 9.00 − 0.20 each, less 31.40
  expect(at.contribution).toBeCloseTo(10 * 880 - 3140, 6);
});

test("PRICE-53 when the best is the last price looked at the curve does not say where to stop", () => {
  const steep = priceCurve({ kind: "constant elasticity", level: Math.log(40), elasticity: -0.3 }, setting);
  expect(steep.atEdge).toBe("highest");
  expect(steep.best.price).toBe(2000);
});

test("PRICE-53 when no price leaves anything there is no range", () => {
  const poor = priceCurve({ kind: "linear", level: 4, slope: -0.002 }, { ...setting, cost: 9000 });
  expect(poor.range).toBeNull();
  expect(agreedRange([poor])).toBeNull();
});

test("PRICE-53 the range of both curves is where they overlap", () => {
  const linear = priceCurve({ kind: "linear", level: 28, slope: -0.014 }, setting);
  const dear = priceCurve({ kind: "linear", level: 28, slope: -0.0125 }, setting);
  const shared = agreedRange([linear, dear]);
  expect(shared).toEqual({ from: dear.range?.from, until: linear.range?.until });
  const far = priceCurve({ kind: "linear", level: 28, slope: -0.05 }, setting);
  expect(agreedRange([linear, far])).toBeNull();
});

test("PRICE-52 no price looked at leaves more than the best, and all in the range leave nearly as much", () => {
  assert(
    property(
      integer({ min: 5, max: 40 }),
      integer({ min: 2, max: 40 }),
      integer({ min: 0, max: 400 }),
      (level, capacity, perHead) => {
        const found = priceCurve(
          { kind: "linear", level, slope: -level / 1800 },
          { ...setting, capacity, perHead },
        );
        for (const { price, contribution } of found.points) {
          expect(contribution).toBeLessThanOrEqual(found.best.contribution);
          const within = found.range !== null && price >= found.range.from && price <= found.range.until;
          if (within) expect(contribution).toBeGreaterThanOrEqual(found.best.contribution * 0.95);
        }
      },
    ),
    { numRuns: 30 },
  );
});

test("prices are looked at in steps that are kind to a purse", () => {
  expect(pricesLookedAt({ from: 400, until: 1800 })[1]).toBe(410);
  expect(pricesLookedAt({ from: 423, until: 460 })).toHaveLength(38);
  expect(pricesLookedAt({ from: 0, until: 3 })).toEqual([1, 2, 3]);
  expect(pricesLookedAt({ from: 250_000, until: 900_000 }).length).toBeLessThanOrEqual(160);
});

function surveyed(survey: SurveyDocument) {
  const found = readSurvey(survey, GBP, "survey");
  return found.ok
    ? found.value.map(({ where, price, heads }) => `${where} ${price} ${heads ?? "?"}`)
    : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-54 a pasted table is read with its headings, its signs and its gaps", () => {
  const pasted = "Where\tPrice\tHeads\nQuay Street\t£9.50\t12\n\nPlum Yard\t11\t\r\n";
  expect(surveyed(pasted)).toEqual(["Quay Street 950 12", "Plum Yard 1100 ?"]);
  expect(surveyed("Quay Street; 9,50; 12\nPlum Yard; 11.00")).toEqual([
    "Quay Street 950 12",
    "Plum Yard 1100 ?",
  ]);
  expect(surveyed("Quay Street, 9.50, 12")).toEqual(["Quay Street 950 12"]);
  expect(surveyed("")).toEqual([]);
  // headings alone stand over nothing: one line without a figure is told, not passed over
  expect(surveyed("Plum Yard")).toEqual(["survey-line-unreadable at survey[0]"]);
});

test("PRICE-54 lines that are no prices, and prices of another currency, are told by their line", () => {
  expect(
    surveyed("Quay Street; 9.50\nPlum Yard\nBaths; $8\nBarn; 8 EUR\nHall; 9; -2\nRoom; cheap 1"),
  ).toEqual([
    "survey-line-unreadable at survey[1]",
    "currencies-mixed at survey[2].price",
    "currencies-mixed at survey[3].price",
    "survey-heads-out-of-range at survey[4].heads",
    "money-unreadable at survey[5].price",
  ]);
});

test("PRICE-54 the middle of four prices is between the second and the third", () => {
  const rows = readSurvey(
    [{ price: "8.00" }, { price: "12.00" }, { price: "9.00" }, { price: "10.00" }],
    GBP,
    "survey",
  );
  expect(rows.ok && surveySummary(rows.value)).toEqual({ count: 4, least: 800, median: 950, most: 1200 });
  expect(surveySummary([])).toBeNull();
});
