import { expect, test } from "vitest";
import { priceAnswer } from "./price-answer.ts";
import type { PriceDocumentInput } from "./price-document.ts";
import type { PriceJson } from "./price-json.ts";

// Always 10 people for 12 places: half pay 10.00, half 8.00 by a 10-pass; 9.00 a head less 0.50 leaves 8.50.
const steady: PriceDocumentInput = {
  currency: "GBP",
  cost: "34.00",
  perHead: "0.50",
  prices: { single: "10.00", passes: [{ classes: 10, price: "80.00" }] },
  mix: { single: 0.5, "pass-10": 0.5 },
  heads: 10,
  dispersion: 0,
  capacity: 12,
};

function answered(input: unknown): PriceJson {
  const found = priceAnswer(input);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value.json;
}

function problemsOf(input: unknown): readonly string[] {
  const found = priceAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-90 a class that always has ten people is answered without a doubt", () => {
  // 10 × 8.50 − 34.00 = 51.00; 34 ÷ 8.50 = 4 people pay for it; a class must bring 3.40 + 0.50
  const json = answered(steady);
  expect(json).toMatchObject({
    yield: "9.00",
    breakEven: 4,
    target: null,
    curve: null,
    survey: null,
    studio: null,
  });
  expect(json.heads).toMatchObject({
    expectedHeads: 10,
    expectedContribution: "51.00",
    contributionAtMean: "51.00",
    chanceOfLoss: 0,
    chanceFull: 0,
    usualHeads: [10, 10],
    worstQuarter: "51.00",
    term: { sessions: 12, expectedContribution: "612.00", chanceOfLoss: 0, nineOfTen: "612.00" },
  });
  expect(json.ladder).toMatchObject({
    usual: "single",
    lowest: { key: "pass-10", perClass: "8.00" },
    floor: "0.50",
    eveningPrice: "3.90",
    underEvening: [],
    findings: [],
    displaced: { displaced: 0, costs: "0.00" },
  });
  expect(json.sentences).toEqual([
    "An evening leaves 51.00 GBP on average, with 10 people on the mats.",
    "It loses money with a chance of 0 %, and over 12 evenings 0 %, if evenings do not go up and down together.",
    "Eight evenings of ten have 10 people; the hall is full 0 % of the time.",
    "One person brings 9.00 GBP on average. The least is 8.00 GBP, by a 10-pass.",
    "The ladder of prices holds.",
    "The people who would like to come, now 10 (known): at 3.9 or less an evening loses on average.",
  ]);
});

test("PRICE-90 the working can be followed with a pencil", () => {
  const { working } = answered(steady);
  expect(working.map(({ part, label, sum, amount }) => `${part}, ${label}: ${sum} = ${amount}`)).toEqual([
    "yield, Single: 0.5 × 10.00 = 5.00",
    "yield, 10-pass: 0.5 × 80.00 ÷ 10 = 4.00",
    "yield, One person brings on average:  = 9.00",
    "yield, One person leaves: 9.00 − 0.50 cost per head = 8.50",
    "heads, People on average: 10 would like to come, 12 places, 0 turned away = 10",
    "heads, They leave: 10 × 8.50 = 85.00",
    "heads, less the evening:  = 34.00",
    "heads, An evening leaves on average:  = 51.00",
    "heads, Chance of a loss: fewer than 4 people = 0 %",
  ]);
});

test("PRICE-91 people turned away make the plain sum too rosy and cheaper places dear", () => {
  // 14 for 12 places: 12 × 8.50 − 34 = 68.00, the plain sum 85.00; 2 singles kept out by cheap places, 2.00 each
  const json = answered({ ...steady, heads: 14 });
  expect(json.heads).toMatchObject({
    expectedContribution: "68.00",
    contributionAtMean: "85.00",
    chanceFull: 1,
  });
  expect(json.sentences).toContain(
    "The sum with the mean of 14 people says 85.00 GBP, 17.00 GBP too much, since a full hall turns people away.",
  );
  expect(json.sentences).toContain(
    "When it is full cheaper places keep out up to 2 singles an evening on average, 4.00 GBP an evening.",
  );
  // always full: a place is worth 0.50 + 10.00
  expect(json.ladder.findings.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "ladder-below-floor at prices.passes[0]",
  ]);
});

test("PRICE-92 what would change the answer is turned figure by figure, guesses marked", () => {
  const { changes } = answered({ ...steady, guesses: ["prices.single", "heads"] });
  const at = changes.evening.map(({ path, now, at, guess }) => [path, now, at, guess]);
  // price of single p: (p + 8) ÷ 2 − 0.50 < 3.40 has no p ≥ 0; of the pass none; each head costs 5.61 or more
  expect(at).toEqual([
    ["heads", 10, 3.9, true],
    ["capacity", 12, 3, false],
    ["cost", "34.00", "85.01", false],
    ["perHead", "0.50", "5.61", false],
    ["prices.single", "10.00", null, true],
    ["prices.passes[0]", "80.00", null, false],
  ]);
  expect(changes.studio).toBeNull();
});

test("PRICE-93 a rise, a target and courses are told to the coin", () => {
  const json = answered({
    ...steady,
    rises: ["1.00"],
    doorToDoorMinutes: 120,
    target: { perHour: "18.00", taxShare: 0.25 },
    prices: {
      ...steady.prices,
      courses: [{ sessions: 3, price: "25.00" }],
      monthly: { perSession: "8.50", sessionsPerYear: 40 },
    },
  });
  // of the 5 who pay singles 1.00 ÷ (10.00 + 1.00 − 0.50) = 9.5 %, 0.48 people; all prices a tenth up bring
  // 9.90 instead of 9.00: 0.90 ÷ (9.90 − 0.50) = 9.6 % of 10
  expect(json.rises).toEqual([
    {
      rise: "1.00",
      single: {
        from: "10.00",
        until: "11.00",
        levelLoss: 0.0952380952381,
        heads: 0.47619047619,
        says: "With the single at 11.00 GBP instead of 10.00 GBP an evening stays level while no more than 9.5 % of those who pay singles go, 0.5 people.",
      },
      all: {
        from: "9.00",
        until: "9.90",
        levelLoss: 0.0957446808511,
        heads: 0.957446808511,
        says: "With every price up by as much in proportion, one person brings 9.90 GBP instead of 9.00 GBP, and an evening stays level while no more than 9.6 % of all the people go, 1 person.",
      },
    },
  ]);
  // (34.00 + 2 × 18 ÷ 0.75) ÷ 10 + 0.50 = 8.70; with the mix 8.70 × 10 ÷ 9 = 9.67
  expect(json.target).toEqual({
    perHour: "18.00",
    taxShare: 0.25,
    yield: "8.70",
    single: "9.67",
    says: "For 18.00 GBP an hour from door to door after 25 % tax one person must bring 8.70 GBP on average; with the same mix and as many people that is a single of 9.67 GBP. What tax takes is an estimate: ask the tax authority.",
  });
  const sums = json.working.filter(({ part }) => part === "rise" || part === "target");
  expect(sums.map(({ label, sum, amount }) => [label, sum, amount])).toEqual([
    ["The single, from 10.00 to 11.00", "", "1.00"],
    ["Then leaves", "11.00 − 0.50 cost per head", "10.50"],
    ["May go, of 5 people", "1.00 ÷ 10.50", "9.5 %"],
    ["One person on average, from 9.00 to 9.90", "", "0.90"],
    ["Then leaves", "9.90 − 0.50 cost per head", "9.40"],
    ["May go, of 10 people", "0.90 ÷ 9.40", "9.6 %"],
    ["Your pay for the evening, before tax", "120 min ÷ 60 × 18.00 ÷ 0.75 kept after tax", "48.00"],
    ["An evening costs", "", "34.00"],
    ["Of each person who can be expected", "(48.00 + 34.00) ÷ 10", "8.20"],
    ["One person must bring", "with 0.50 cost per head", "8.70"],
    ["As a single, the mix as it is", "8.70 × 10.00 ÷ 9.00", "9.6667"],
  ]);
  expect(json.courses).toEqual([
    {
      key: "course-3",
      sessions: 3,
      price: "25.00",
      says: "A course of 3 for 25.00 GBP: who joins with 2 left pays 16.67 GBP, and a session that you cancel gives back 8.33 GBP or 8.34 GBP.",
      perSession: "8.3333",
      lateJoiner: [
        { remaining: 3, price: "25.00" },
        { remaining: 2, price: "16.67" },
        { remaining: 1, price: "8.33" },
      ],
      refunds: ["8.33", "8.34", "8.33"],
    },
  ]);
  // 340.00 ÷ 12 = 28.333…: 8 × 28.33 + 4 × 28.34 = 340.00
  expect(json.monthly?.says).toBe(
    "Paid by the month, 40 sessions a year at 8.50 GBP are 340.00 GBP: twelve payments, 8 of 28.33 GBP and 4 of 28.34 GBP. Say when it is sold that a month without class is paid for too.",
  );
  expect(json.sentences).toContain(json.monthly?.says);
  expect(json.sentences).toContain(json.courses[0]?.says);
});

test("PRICE-93 a price curve from two beliefs and a pasted survey is told with where both agree", () => {
  const json = answered({
    ...steady,
    beliefs: [
      { price: "8.00", heads: 16 },
      { price: "12.00", heads: 10 },
    ],
    survey: "Where;Price\nQuay Street;9.50\nPlum Yard;11.00\nBaths;8.00",
  });
  expect(json.survey).toEqual({ count: 3, least: "8.00", median: "9.50", most: "11.00" });
  const [elastic, linear] = json.curve?.curves ?? [];
  expect(elastic).toMatchObject({ kind: "constant elasticity" });
  expect(elastic?.elasticity).toBeCloseTo(Math.log(10 / 16) / Math.log(12 / 8), 9);
  // −1.5 a pound at 10.00, where 13 would come: −1.5 × 10 ÷ 13
  expect(linear?.elasticity).toBeCloseTo(-15 / 13, 9);
  const { agreed } = json.curve ?? {};
  expect(agreed).not.toBeNull();
  expect(json.sentences).toContain(
    `Both curves are content with ${agreed?.from} GBP to ${agreed?.until} GBP.`,
  );
  expect(json.sentences).toContain("3 prices nearby are 8.00 GBP to 11.00 GBP, the middle one 9.50 GBP.");
});

test("PRICE-94 her own class against a studio, by the hour, with what would turn it", () => {
  const json = answered({
    ...steady,
    doorToDoorMinutes: 120,
    studio: {
      name: "Plum Yard",
      pay: { form: "flat", pay: "33.00" },
      heads: 9,
      minutes: 90,
      travelCost: "3.00",
    },
  });
  // own 51.00 in 2 h: 25.50; studio 30.00 in 1.5 h: 20.00, which is 40.00 in 2 h: 74.00 ÷ 8.50 = 8.7
  expect(json.studio).toMatchObject({
    name: "Plum Yard",
    own: { perSession: "51.00", perHour: "25.50" },
    studio: { perSession: "30.00", perHour: "20.00" },
    equalHeads: 9,
    chanceOwnIsBetter: 1,
  });
  expect(json.sentences).toContain("With 9 people your own class earns as much an hour as Plum Yard.");
  const turn = (path: string) => json.changes.studio?.find((it) => it.path === path);
  // 38.25 in 1.5 h is 25.50: pay of 41.26 beats it; 51.00 in 154 min is 19.87
  expect(turn("studio.pay.pay")).toMatchObject({
    now: "33.00",
    at: "41.26",
    becomes: "Plum Yard earns more an hour",
  });
  expect(turn("doorToDoorMinutes")).toMatchObject({ now: 120, at: 154 });
  expect(turn("heads")).toMatchObject({ at: 8.7 });
});

test("PRICE-95 every problem of a price document is told at once, each at its place", () => {
  expect(
    problemsOf({
      ...steady,
      cost: "-1",
      heads: 2000,
      capacity: 0,
      sessions: 0.5,
      deepest: 2,
      rises: ["x"],
      target: { perHour: "20.00", taxShare: 1 },
      beliefs: [
        { price: "0", heads: 3 },
        { price: "9.00", heads: 0 },
      ],
      survey: "Baths; $8",
      lookedAt: { from: "9.00", until: "8.00" },
      studio: { pay: { form: "tiered", base: "28", perHead: "2", above: -1 }, heads: 9, minutes: 0 },
    }),
  ).toEqual([
    "money-negative at cost",
    "heads-out-of-range at heads",
    "capacity-zero at capacity",
    "sessions-out-of-range at sessions",
    "door-to-door-missing at doorToDoorMinutes",
    "share-out-of-range at deepest",
    "money-unreadable at rises[0]",
    "share-out-of-range at target.taxShare",
    "belief-price-zero at beliefs[0].price",
    "belief-heads-out-of-range at beliefs[1].heads",
    "currencies-mixed at survey[0].price",
    "price-range-backwards at lookedAt",
    "studio-threshold at studio.pay.above",
    "minutes-out-of-range at studio.minutes",
  ]);
  const onePoint = { ...steady, beliefs: [{ price: "9.00", heads: 10 }] };
  expect(problemsOf(onePoint)).toEqual(["curve-one-point at beliefs"]);
  const upward = {
    ...steady,
    beliefs: [
      { price: "9.00", heads: 10 },
      { price: "10.00", heads: 12 },
    ],
  };
  expect(problemsOf(upward)).toEqual(["curve-slopes-upward at beliefs"]);
});

test("PRICE-95 a yield under the cost per head is answered, with what to change", () => {
  const json = answered({ ...steady, perHead: "9.50" });
  expect(json.breakEven).toBeNull();
  expect(json.heads.chanceOfLoss).toBe(1);
  expect(json.ladder.findings.map(({ code }) => code)).toContain("yield-under-cost");
  expect(json.sentences).toContain(
    "One person brings 9.00 GBP on average and costs 9.50 GBP, so more people only lose more. Raise the prices, give fewer free places or lower the cost per head.",
  );
});
