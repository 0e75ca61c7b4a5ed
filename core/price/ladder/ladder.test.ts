import { branded, type CurrencyCode } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { plainAmount } from "../reply.ts";
import { displacedSingles } from "./displaced-singles.ts";
import { type LadderFacts, ladderChecks, ladderFloor, ladderYield, usualPrice } from "./ladder-checks.ts";
import { pricesSchema } from "../evening-document.ts";
import { readTiers } from "./read-tiers.ts";
import { payerInWords, payerName } from "../payer-key.ts";

const GBP = branded<CurrencyCode>("GBP");

function read(prices: unknown, mix: Readonly<Record<string, number>>) {
  return readTiers(pricesSchema.parse(prices), mix, GBP);
}

function tiersOf(prices: unknown, mix: Readonly<Record<string, number>>) {
  const found = read(prices, mix);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value;
}

const facts: LadderFacts = {
  currency: GBP,
  perHead: new Fraction(20),
  chanceFull: 0.5,
  deepest: new Fraction(1, 4),
  write: plainAmount,
};

const sound = {
  single: "10.00",
  concession: "8.00",
  passes: [
    { classes: 10, price: "85.00" },
    { classes: 5, price: "45.00" },
  ],
  courses: [{ sessions: 6, price: "54.00" }],
};
const mix = { single: 0.3, "pass-5": 0.2, "pass-10": 0.2, "course-6": 0.2, concession: 0.1 };

test("PRICE-30 a ladder that falls as passes grow and never too far is sound", () => {
  // a class: 10.00, 9.00, 8.50; course 9.00; concession 8.00; floor 0.20 + 0.5 × 10.00 = 5.20; a quarter off 7.50
  expect(ladderChecks(tiersOf(sound, mix), facts)).toEqual([]);
  // 0.3 × 10 + 0.2 × 9 + 0.2 × 8.50 + 0.2 × 9 + 0.1 × 8
  expect(ladderYield(tiersOf(sound, mix)).valueOf()).toBe(910);
});

test("PRICE-31 a larger pass whose class costs no less is told, with the price that would do", () => {
  const prices = {
    single: "10.00",
    passes: [
      { classes: 5, price: "45.00" },
      { classes: 10, price: "95.00" },
    ],
  };
  const [found, ...others] = ladderChecks(tiersOf(prices, { single: 1 }), facts);
  expect(others).toEqual([]);
  expect(found).toEqual({
    code: "ladder-rises",
    place: "prices.passes[1]",
    says: "10-pass costs 9.50 GBP a class, no less than 9.00 GBP with a 5-pass.",
    next: "Ask less than 90.00 GBP for it, or leave it out.",
  });
});

test("PRICE-31 a course at the price of singles gives nobody a reason to take it", () => {
  const prices = { single: "10.00", courses: [{ sessions: 6, price: "60.00" }] };
  expect(ladderChecks(tiersOf(prices, { single: 1 }), facts).map(({ says }) => says)).toEqual([
    "Course of 6 costs 10.00 GBP a class, no less than 10.00 GBP with a single.",
  ]);
});

test("PRICE-32 a rung under what a place is worth in a hall that is often full is told", () => {
  // 0.20 + 0.9 × 10.00 = 9.20; the 10-pass brings 8.50, the floor of pay what you can 5.00
  const prices = {
    single: "10.00",
    passes: [{ classes: 10, price: "85.00" }],
    payWhatYouCan: { floor: "5.00", average: "9.50" },
  };
  const tiers = tiersOf(prices, { single: 0.5, "pass-10": 0.4, "pay-what-you-can": 0.1 });
  const found = ladderChecks(tiers, { ...facts, chanceFull: 0.9 });
  expect(ladderFloor(tiers, { ...facts, chanceFull: 0.9 })?.valueOf()).toBe(920);
  expect(found.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "ladder-below-floor at prices.passes[0]",
    "ladder-below-floor at prices.payWhatYouCan",
  ]);
  expect(found[0]?.says).toBe(
    "10-pass brings 8.50 GBP a class, under the 9.20 GBP that a place is worth: the hall is full 90 % of the time and a single is then turned away.",
  );
  expect(found[0]?.next).toBe("Ask at least 92.00 GBP for it, or limit how many places go so.");
});

test("PRICE-32 without a single price nothing is displaced, so there is no floor", () => {
  const tiers = tiersOf({ courses: [{ sessions: 6, price: "54.00" }] }, { "course-6": 1 });
  expect(ladderFloor(tiers, facts)).toBeNull();
  expect(displacedSingles(tiers, { kind: "poisson", mean: 9 }, 12)).toBeNull();
});

test("PRICE-33 nothing is more than a quarter below what most people pay", () => {
  // most pay 9.00 by a 5-pass; a quarter less is 6.75; 6.00 is 33.3 % less
  const prices = { single: "10.00", passes: [{ classes: 5, price: "45.00" }], concession: "6.00" };
  const tiers = tiersOf(prices, { single: 0.3, "pass-5": 0.5, concession: 0.1, free: 0.1 });
  expect(usualPrice(tiers)?.key).toBe("pass-5");
  expect(ladderChecks(tiers, { ...facts, chanceFull: 0 })).toEqual([
    {
      code: "ladder-too-deep",
      place: "prices.concession",
      says: "Concession costs 6.00 GBP a class, 33.3 % less than what most people pay, 9.00 GBP.",
      next: "Ask at least 6.75 GBP for it, which is 25 % less.",
    },
  ]);
});

test("PRICE-34 a yield at or under the cost per head is told", () => {
  const tiers = tiersOf({ single: "0.40" }, { single: 0.5, free: 0.5 });
  expect(ladderChecks(tiers, { ...facts, chanceFull: 0 }).map(({ says }) => says)).toEqual([
    "One person brings 0.20 GBP on average and costs 0.20 GBP, so more people only lose more.",
  ]);
});

test("PRICE-35 cheaper heads displace singles only when the hall is full", () => {
  // always 12 people for 10 places, half of them at 8.00 for 10.00: 2 turned away, 2 × 2.00 lost
  const tiers = tiersOf({ single: "10.00", concession: "8.00" }, { single: 0.5, concession: 0.5 });
  expect(displacedSingles(tiers, { kind: "steady", mean: 12 }, 10)).toEqual({
    chanceFull: 1,
    turnedAway: 2,
    displaced: 2,
    costs: 400,
  });
  // 9 people for 10 places displace nobody
  expect(displacedSingles(tiers, { kind: "steady", mean: 9 }, 10)).toMatchObject({ displaced: 0, costs: 0 });
  // 10 of 30 wait outside, but only 5 of the 10 places are cheap
  expect(displacedSingles(tiers, { kind: "steady", mean: 30 }, 10)).toMatchObject({
    turnedAway: 20,
    displaced: 5,
  });
});

test("PRICE-35 when everybody pays the single nobody is displaced", () => {
  const tiers = tiersOf({ single: "10.00" }, { single: 1 });
  expect(displacedSingles(tiers, { kind: "poisson", mean: 12 }, 10)).toMatchObject({
    displaced: 0,
    costs: 0,
  });
});

test("PRICE-36 what cannot be a ladder is told at its place", () => {
  const found = read(
    {
      courses: [
        { sessions: 6, price: "54.00" },
        { sessions: 6, price: "50.00" },
        { sessions: 0, price: "5.00" },
      ],
      payWhatYouCan: { floor: "5.00", average: "4.00" },
    },
    { single: 0.4, "courses-6": 0.6 },
  );
  expect(found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "course-twice at prices.courses[1].sessions",
    "course-size at prices.courses[2].sessions",
    "average-below-floor at prices.payWhatYouCan.average",
    "mix-key-unknown at mix.courses-6",
  ]);
  const unpriced = read({ single: "10.00" }, { single: 0.5, "course-6": 0.5 });
  expect(unpriced.ok ? [] : unpriced.problems.map(({ place }) => place)).toEqual(["mix.course-6"]);
});

test("rungs are called what they are called at the door", () => {
  const keys = ["single", "pass-10", "course-6", "pay-what-you-can", "monthly"];
  expect(keys.map(payerName)).toEqual(["Single", "10-pass", "Course of 6", "Pay what you can", "Monthly"]);
  expect(keys.map(payerInWords)).toEqual([
    "a single",
    "a 10-pass",
    "a course of 6",
    "pay what you can",
    "the monthly payment",
  ]);
});
