// Sums of prices in the trade of teaching in hired halls: common practice, no source. The figures are those that
// teachers reckon with; each is worked out by hand in the comment.
import {
  ladderChecks,
  owedClasses,
  plainAmount,
  priceAnswer,
  type PriceDocumentInput,
  type PriceJson,
  readCurrency,
  readTiers,
  studioPay,
} from "#core/price";
import { minor } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";

const plain: PriceDocumentInput = {
  currency: "GBP",
  cost: "34.60",
  perHead: "0.20",
  prices: { single: "8.60" },
  mix: { single: 1 },
  heads: 10,
  dispersion: 0,
  capacity: 14,
};

function answered(change: Partial<PriceDocumentInput>): PriceJson {
  const read = priceAnswer({ ...plain, ...change });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.json;
}

test("an own class of 38.00 an evening equals a studio's 30.00 at 9 heads, as long from door to door", () => {
  // (38 + 30) ÷ 8.40 = 8.1
  const pay = { form: "flat", pay: "30.00" } as const;
  const { studio } = answered({
    cost: "38.00",
    doorToDoorMinutes: 140,
    studio: { pay, heads: 12, minutes: 140 },
  });
  expect(studio?.equalHeads).toBe(9);
});

test("a studio that pays 28 up to 6 heads and 2.50 for each more, at most 50, pays 43 for 12 and 50 for 15", () => {
  const pay = {
    form: "tiered",
    base: minor(2800),
    perHead: minor(250),
    above: 6,
    cap: minor(5000),
  } as const;
  // 28 + 2.50 × 6 = 43; 28 + 2.50 × 9 = 50.50
  expect([6, 12, 15].map((heads) => Number(studioPay(pay, heads)))).toEqual([2800, 4300, 5000]);
});

test("a rise from 9 to 10 with 0.20 a head can lose 10.2 per cent and be level", () => {
  // 1 ÷ 9.80
  const { rises } = answered({ prices: { single: "9.00" }, rises: ["1.00"] });
  expect(rises[0]?.single?.levelLoss).toBeCloseTo(0.102, 3);
});

test("20 an hour after 26 per cent tax for 2.6 hours with 10 heads wants 10.69 of each", () => {
  // (34.60 + 52 ÷ 0.74) ÷ 10 + 0.20 = 10.687
  const { target } = answered({ doorToDoorMinutes: 156, target: { perHour: "20.00", taxShare: 0.26 } });
  expect([target?.yield, target?.single]).toEqual(["10.69", "10.69"]);
});

test("40 sessions at 8.50 paid in twelve parts are 28.33 a month", () => {
  const { monthly } = answered({
    prices: { single: "10.00", monthly: { perSession: "8.50", sessionsPerYear: 40 } },
  });
  // 340.00 ÷ 12 = 28.333
  expect(monthly?.year).toBe("340.00");
  expect(monthly?.payments[0]).toBe("28.33");
});

test("a block of 6 at 15 per cent off 10.00 is 51.00; with 4 left 34.00; a cancelled session gives back a sixth", () => {
  const { courses } = answered({
    prices: { single: "10.00", courses: [{ sessions: 6, price: "51.00" }] },
  });
  expect(courses[0]?.lateJoiner[2]).toEqual({ remaining: 4, price: "34.00" });
  expect(courses[0]?.refunds).toEqual(["8.50", "8.50", "8.50", "8.50", "8.50", "8.50"]);
});

test("in a hall that is full 6 times of 10 a place that goes for 5.77 is under the 6.00 that a single of 10 is worth", () => {
  // 50 a month at two classes a week is 5.77 each, at three 3.85
  const currency = readCurrency("GBP");
  if (!currency.ok) throw new Error("GBP");
  const codes = ["5.77", "6.00", "3.85"].map((perSession) => {
    const tiers = readTiers(
      { single: "10.00", passes: [], monthly: { perSession } },
      { single: 1 },
      currency.value,
    );
    if (!tiers.ok) throw new Error(perSession);
    const facts = {
      currency: currency.value,
      perHead: new Fraction(0),
      chanceFull: 0.6,
      deepest: new Fraction(95, 100),
      write: plainAmount,
    };
    return ladderChecks(tiers.value, facts).map(({ code }) => code);
  });
  expect(codes).toEqual([["ladder-below-floor"], [], ["ladder-below-floor"]]);
});

test("three 10-passes of 85.00 with 4, 9 and none left owe 110.50", () => {
  // 85 × 13 ÷ 10
  const passes = [4, 9, 0].map((left) => ({ price: minor(8500), classes: 10, left }));
  expect(owedClasses(passes).amount.valueOf()).toBe(11_050);
});
