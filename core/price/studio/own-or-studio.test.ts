import { minor } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { type OwnClass, ownOrStudio, type StudioClass } from "./own-or-studio.ts";
import { type StudioPay, studioPay } from "./studio-pay.ts";

function paid(pay: StudioPay, ...heads: readonly number[]): readonly number[] {
  return heads.map((count) => studioPay(pay, count).valueOf());
}

test("PRICE-60 flat pay does not ask who came", () => {
  expect(paid({ form: "flat", pay: minor(3000) }, 0, 20)).toEqual([3000, 3000]);
});

test("PRICE-60 tiered pay is the base, more for each head above, and no more than the cap", () => {
  // 28.00 to 6, then 2.50 each: 8 → 33.00; 15 → 50.50, capped at 50.00
  const tiered: StudioPay = {
    form: "tiered",
    base: minor(2800),
    perHead: minor(250),
    above: 6,
    cap: minor(5000),
  };
  expect(paid(tiered, 0, 6, 8, 15)).toEqual([2800, 2800, 3300, 5000]);
  expect(paid({ ...tiered, cap: null }, 15)).toEqual([5050]);
});

test("PRICE-60 pay per head has its minimum", () => {
  expect(paid({ form: "per head", perHead: minor(400), minimum: minor(2000) }, 0, 5, 6)).toEqual([
    2000, 2000, 2400,
  ]);
});

test("PRICE-60 a share of the takings may have a minimum too", () => {
  // 60 % of 11.00 is 6.60 a head
  const share = new Fraction(3, 5);
  const pay: StudioPay = {
    form: "share of takings",
    share,
    takingsPerHead: minor(1100),
    minimum: minor(1500),
  };
  expect(paid(pay, 2, 3, 10)).toEqual([1500, 1980, 6600]);
});

const own: OwnClass = {
  demand: { kind: "steady", mean: 10 },
  capacity: 14,
  margin: new Fraction(840),
  cost: new Fraction(3800),
  minutes: 120,
};
const studio: StudioClass = {
  pay: { form: "flat", pay: minor(3000) },
  demand: { kind: "steady", mean: 12 },
  capacity: 20,
  travelCost: minor(0),
  minutes: 120,
};

test("PRICE-61 with the same hours 9 people earn what the studio pays: (38 + 30) ÷ 8.40 = 8.1", () => {
  const found = ownOrStudio(own, studio);
  expect(found.equalHeads).toBe(9);
  // 10 × 8.40 − 38.00 = 46.00 for two hours
  expect(found.own).toEqual({ perSession: 4600, perHour: 2300 });
  expect(found.studio).toEqual({ perSession: 3000, perHour: 1500 });
  expect(found.chanceOwnIsBetter).toBe(1);
  expect(found.table[9]?.perHour.valueOf()).toBe((9 * 840 - 3800) / 2);
});

test("PRICE-61 each is divided by its own hours and the studio’s travel is taken off", () => {
  // (30.00 − 3.00) ÷ 90 min = 18.00 an hour; own needs 36.00 in two hours: 74.00 ÷ 8.40 = 8.81
  const nearer = ownOrStudio(own, { ...studio, travelCost: minor(300), minutes: 90 });
  expect(nearer.studio).toEqual({ perSession: 2700, perHour: 1800 });
  expect(nearer.equalHeads).toBe(9);
});

test("PRICE-61 exactly equal is enough", () => {
  // 8 × 8.50 = 68.00 = 38.00 + 30.00
  expect(ownOrStudio({ ...own, margin: new Fraction(850) }, studio).equalHeads).toBe(8);
});

test("PRICE-61 a head that leaves nothing never equals a studio", () => {
  const found = ownOrStudio({ ...own, margin: new Fraction(-50) }, studio);
  expect(found.equalHeads).toBeNull();
  expect(found.chanceOwnIsBetter).toBe(0);
  expect(() => ownOrStudio({ ...own, minutes: 0 }, studio)).toThrow("minutes: 0");
});

test("PRICE-62 pay by tiers is averaged over who comes, not taken at the mean", () => {
  // steady 6.5 is 6 or 7: (28.00 + 30.50) ÷ 2 = 29.25
  const tiered: StudioPay = { form: "tiered", base: minor(2800), perHead: minor(250), above: 6, cap: null };
  const found = ownOrStudio(own, { ...studio, pay: tiered, demand: { kind: "steady", mean: 6.5 } });
  expect(found.studio.perSession).toBe(2925);
  // its worst quarter has 6
  expect(found.studioWorstQuarter.perSession).toBe(2800);
});

test("PRICE-62 the worst quarter can favour the studio where the mean favours her own class", () => {
  const uncertain = ownOrStudio({ ...own, demand: { kind: "poisson", mean: 10 } }, studio);
  expect(uncertain.own.perHour).toBeGreaterThan(uncertain.studio.perHour);
  expect(uncertain.ownWorstQuarter.perHour).toBeLessThan(uncertain.studioWorstQuarter.perHour);
  expect(uncertain.studioWorstQuarter.perHour).toBe(1500);
});
