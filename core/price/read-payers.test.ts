import { isCurrency } from "#core/words";
import { expect, test } from "vitest";
import { readPayers } from "./read-payers.ts";
import { yieldOf } from "./yield.ts";

const prices = { single: "10.00", passes: [{ classes: 10, price: "85.00" }] };

function read(mix: Readonly<Record<string, number>>, priced: Parameters<typeof readPayers>[0] = prices) {
  const code = "GBP";
  if (!isCurrency(code)) throw new Error(code);
  return readPayers(priced, mix, code);
}

function problemsOf(...input: Parameters<typeof read>): readonly string[] {
  const result = read(...input);
  return result.ok ? [] : result.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-3 a key of the mix is single, a pass by its size, concession or free", () => {
  expect(problemsOf({ single: 0.5, "pass-10": 0.4, free: 0.1 })).toEqual([]);
  expect(problemsOf({ drop: 0.2, "pass-": 0.2, "pass-0": 0.2, "pass-010": 0.2, "10-pass": 0.2 })).toEqual([
    "mix-key-unknown at mix.drop",
    "mix-key-unknown at mix.pass-",
    "mix-key-unknown at mix.pass-0",
    "mix-key-unknown at mix.pass-010",
    "mix-key-unknown at mix.10-pass",
  ]);
});

test("PRICE-3 shares that miss 1 by more than a thousand-millionth are told", () => {
  expect(problemsOf({ single: 0.5, "pass-10": 0.499999998 })).toEqual(["mix-not-one at mix"]);
  expect(problemsOf({ single: 0.5, "pass-10": 0.499999999 })).toEqual([]);
  expect(problemsOf({})).toEqual(["mix-not-one at mix"]);
});

test("PRICE-3 a share below 0, above 1 or not a number is told", () => {
  expect(problemsOf({ single: 1.5, "pass-10": -0.5 })).toEqual([
    "mix-share-out-of-range at mix.single",
    "mix-share-out-of-range at mix.pass-10",
  ]);
  expect(problemsOf({ single: Number.NaN })).toEqual(["mix-share-out-of-range at mix.single"]);
});

test("PRICE-3 decimals count as they are written: 0.7 + 0.2 + 0.1 is one", () => {
  // in binary numbers it is 0.9999999999999999, and the yield of 10.00, 8.50 and nothing not quite 8.70
  const result = read({ single: 0.7, "pass-10": 0.2, free: 0.1 });
  expect(result.ok && yieldOf(result.value).equals(870)).toBe(true);
});

test("PRICE-3 thirds that are written out are scaled to exact thirds", () => {
  const result = read({ single: 0.3333333333, "pass-10": 0.3333333333, free: 0.3333333333 });
  // (1000 + 850 + 0) ÷ 3 pence
  expect(result.ok && yieldOf(result.value).toFraction()).toBe("1850/3");
});

test("PRICE-3 a way of paying that somebody uses needs its price, one that nobody uses does not", () => {
  expect(problemsOf({ single: 0.5, concession: 0.5 })).toEqual(["price-missing at mix.concession"]);
  expect(problemsOf({ single: 0.5, "pass-5": 0.5 })).toEqual(["price-missing at mix.pass-5"]);
  expect(problemsOf({ single: 1, concession: 0, "pass-5": 0 })).toEqual([]);
});

test("PRICE-30 courses, pay what you can and a monthly payment bring what they cost a class", () => {
  const ways = {
    passes: [],
    courses: [{ sessions: 6, price: "54.00" }],
    payWhatYouCan: { floor: "4.00", average: "7.00" },
    monthly: { perSession: "8.50" },
  };
  const result = read({ "course-6": 0.4, "pay-what-you-can": 0.2, monthly: 0.3, free: 0.1 }, ways);
  // 0.4 × 9.00 + 0.2 × 7.00 + 0.3 × 8.50 + 0.1 × 0 = 3.60 + 1.40 + 2.55
  expect(result.ok && yieldOf(result.value).equals(755)).toBe(true);
});

test("PRICE-36 sessions of a monthly payment that cannot be meant are told", () => {
  const ways = { passes: [], monthly: { perSession: "8.50", sessionsPerYear: 0 } };
  expect(problemsOf({ monthly: 1 }, ways)).toEqual([
    "sessions-out-of-range at prices.monthly.sessionsPerYear",
  ]);
});

test("PRICE-11 prices that cannot be meant are told with the mix's own problems", () => {
  const wrong = {
    single: "-1.00",
    concession: "8.005",
    passes: [
      { classes: 2.5, price: "20.00" },
      { classes: 0, price: "x" },
    ],
  };
  expect(problemsOf({ single: 0.5 }, wrong)).toEqual([
    "money-negative at prices.single",
    "money-too-fine at prices.concession",
    "pass-size at prices.passes[0].classes",
    "pass-size at prices.passes[1].classes",
    "money-unreadable at prices.passes[1].price",
    "mix-not-one at mix",
  ]);
});

test("PRICE-11 two passes of one size are told", () => {
  const twice = { passes: [...prices.passes, { classes: 10, price: "90.00" }] };
  expect(problemsOf({ "pass-10": 1 }, twice)).toEqual(["pass-twice at prices.passes[1].classes"]);
});
