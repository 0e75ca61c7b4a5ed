import { expect, test } from "vitest";
import { evening } from "./evening.ts";
import { eveningJson } from "./evening-json.ts";
import { eveningSentences } from "./evening-sentences.ts";
import type { EveningAnswer } from "./evening-types.ts";
import type { EveningDocumentInput } from "./evening-document.ts";

const quayStreet: EveningDocumentInput = {
  currency: "GBP",
  date: "2027-05-11",
  hire: { perHour: "14.00", incrementMinutes: 30 },
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, other: 25 },
  travelCost: "3.40",
  perHead: "0.20",
  prices: { single: "10.00", passes: [{ classes: 10, price: "85.00" }], concession: "8.00" },
  mix: { single: 0.4, "pass-10": 0.4, concession: 0.1, free: 0.1 },
  heads: 8,
  fixedPerYear: "180.00",
  sessionsPerYear: 40,
};

function answered(input: unknown): EveningAnswer {
  const read = evening(input);
  if (!read.ok) throw new Error(read.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return read.value;
}

function problemsOf(input: unknown): readonly string[] {
  const read = evening(input);
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-1 PRICE-2 PRICE-4 PRICE-6 a plain evening is worked out from the hire to the hour", () => {
  // 20 + 60 + 15 = 95 min → 120 min; 2 h × 14.00 = 28.00; with 3.40 travel 31.40
  // 0.4 × 10 + 0.4 × 8.50 + 0.1 × 8 = 8.20 a head, less 0.20 leaves 8.00; 31.40 ÷ 8 = 3.925 → 4
  // 8 × 8.00 − 31.40 = 32.60; less 180 ÷ 40 = 4.50 leaves 28.10 for 30 + 95 + 25 = 150 min: 11.24 an hour
  // door to door alone: 32.60 ÷ 125 × 60 = 15.648
  expect(eveningJson(answered(quayStreet))).toMatchObject({
    neededMinutes: 95,
    chargedMinutes: 120,
    hire: "28.00",
    cost: "31.40",
    yield: "8.20",
    breakEven: 4,
    contribution: "32.60",
    doorToDoorMinutes: 125,
    perDoorToDoorHour: "15.65",
    trueHourly: "11.24",
  });
});

test("PRICE-9 the working sets the sum out as a person would", () => {
  const { working } = eveningJson(answered(quayStreet));
  expect(working.map(({ label, sum, amount }) => `${label}: ${sum} = ${amount}`)).toEqual([
    "Time needed: 20 set-up + 60 class + 15 pack-down = 95 min",
    "Time charged: 95 min, up to the next 30 = 120 min",
    "Hall, by the hour: 2 h × 14.00 = 28.00",
    "Hall:  = 28.00",
    "Travel:  = 3.40",
    "An evening costs:  = 31.40",
    "Single: 0.4 × 10.00 = 4.00",
    "10-pass: 0.4 × 85.00 ÷ 10 = 3.40",
    "Concession: 0.1 × 8.00 = 0.80",
    "Free: 0.1 × 0.00 = 0.00",
    "One person brings on average:  = 8.20",
    "One person leaves: 8.20 − 0.20 cost per head = 8.00",
    "People who pay for the evening: 31.40 ÷ 8.00 = 3.925, rounded up = 4",
    "An ordinary evening leaves: 8 × 8.00 − 31.40 = 32.60",
    "Its share of fixed costs: 180.00 a year ÷ 40 sessions = 4.50",
    "Door to door: 30 travel + 20 set-up + 60 class + 15 pack-down = 125 min",
    "Preparation and messages:  = 25 min",
    "An hour of your time: 28.10 ÷ 150 min × 60 = 11.24",
  ]);
});

const pounds = (exact: { valueOf(): number }): string => `£${(exact.valueOf() / 100).toFixed(2)}`;

test("PRICE-10 the answer comes first, in sentences, with the word of the locale", () => {
  const answer = answered(quayStreet);
  expect(eveningSentences(answer, "en-GB", pounds)).toEqual([
    "An evening costs £31.40, of which £28.00 is for 120 charged minutes of hire.",
    "4 people pay for the room.",
    "An ordinary evening with 8 people leaves £32.60, £15.65 for each hour from door to door.",
  ]);
  expect(eveningSentences(answer, "en-US", pounds)[0]).toContain("of rental.");
});

test("PRICE-5 a price at the cost per head never pays for the room, and says what would change it", () => {
  // everybody pays 5.00 and costs 5.00
  const level = { ...quayStreet, perHead: "5.00", prices: { single: "5.00" }, mix: { single: 1 } };
  const json = eveningJson(answered(level));
  expect(json.breakEven).toBeNull();
  expect(json.breakEvenSentence).toBe(
    "No number of people pays for the room: one person brings 5.00 GBP on average and costs 5.00 GBP. " +
      "A higher price, fewer free places or a lower cost per head would change that.",
  );
  expect(json.working).toContainEqual({
    part: "breakEven",
    label: "People who pay for the evening",
    sum: "one person leaves nothing",
    amount: "never",
    total: true,
  });
});

test("every problem of an evening is told at once, each at its place", () => {
  const wrong = {
    ...quayStreet,
    date: "2027-02-30",
    hire: { incrementMinutes: 0 },
    minutes: { setUp: -5, class: 60.5, packDown: 15 },
    travelCost: "-1",
    mix: { single: 0.5, "pass-x": 0.5 },
    heads: -1,
    sessionsPerYear: undefined,
  };
  expect(problemsOf(wrong)).toEqual([
    "date-unreadable at date",
    "hire-price-missing at hire",
    "minutes-out-of-range at hire.incrementMinutes",
    "minutes-out-of-range at minutes.setUp",
    "minutes-not-whole at minutes.class",
    "money-negative at travelCost",
    "mix-key-unknown at mix.pass-x",
    "heads-out-of-range at heads",
    "sessions-missing at sessionsPerYear",
  ]);
});
