// Sums of the trade of teaching in hired halls: common practice, no source. Worked out by hand in the
// comments, in pounds, from what teachers and halls usually reckon with.
import { evening, eveningJson, type EveningJson } from "#core/price";
import { expect, test } from "vitest";

const base = {
  currency: "GBP",
  date: "2027-05-11",
  minutes: { setUp: 20, class: 60, packDown: 15 },
  prices: { single: "8.60" },
  mix: { single: 1 },
  heads: 8,
};

function answer(input: object): EveningJson {
  const read = evening({ ...base, ...input });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return eveningJson(read.value);
}

test.each([
  [60, 95],
  [75, 110],
  [90, 125],
])("a class of %i minutes needs the hall for %i", (teaching, needed) => {
  const minutes = { setUp: 20, class: teaching, packDown: 15 };
  expect(answer({ hire: { perHour: "16.00" }, minutes }).neededMinutes).toBe(needed);
});

test("a village rate of 7.50 with 3.00 heating in winter is 10.50 for each charged hour", () => {
  // 120 min: 15.00 + 6.00
  const hire = {
    perHour: "7.50",
    minimumMinutes: 120,
    heating: { perHour: "3.00", months: [10, 11, 12, 1, 2, 3] },
  };
  expect([answer({ hire, date: "2027-01-12" }).hire, answer({ hire }).hire]).toEqual(["21.00", "15.00"]);
});

test("a room that charges 22.00 and gives 30 per cent off from 50 hours a year comes to 15.40 an hour", () => {
  const hire = {
    perHour: "22.00",
    incrementMinutes: 60,
    hoursPerYear: 76,
    bands: [
      { fromHoursPerYear: 50, factor: 0.7 },
      { fromHoursPerYear: 125, factor: 0.5 },
    ],
  };
  expect(answer({ hire }).hire).toBe("30.80");
});

test("an established class of 11 heads in a hall of 31.00 leaves 61.40 an evening", () => {
  // yield 8.60, cost per head 0.20: 11 × 8.40 − 31.00; over 40 weeks 2,456, about 2,460 a year
  const { contribution, breakEven } = answer({ hire: { perSession: "31.00" }, perHead: "0.20", heads: 11 });
  expect(contribution).toBe("61.40");
  // 31.00 ÷ 8.40 = 3.69
  expect(breakEven).toBe(4);
});

test("an own class equals a studio's 30.00 at 9 heads when its evening costs 38.00", () => {
  // (38 + 30) ÷ 8.40 = 8.1: at 8 heads less than 30.00 is left, at 9 more
  const { table } = answer({ hire: { perSession: "38.00" }, perHead: "0.20" });
  expect(table.slice(8, 10).map(({ contribution }) => contribution)).toEqual(["29.20", "37.60"]);
});

test("a price of 10.69 pays 20.00 an hour after 26 per cent tax, for 10 heads and 2.6 hours", () => {
  // cost 34.60, per head 0.20: 10 × 10.49 − 34.60 = 70.30; ÷ 2.6 h = 27.04; × 0.74 = 20.01
  const { trueHourly } = answer({
    hire: { perSession: "34.60" },
    perHead: "0.20",
    prices: { single: "10.69" },
    heads: 10,
    minutes: { setUp: 20, class: 60, packDown: 15, travel: 40, other: 21 },
  });
  expect(trueHourly).toBe("27.04");
  expect(Number(trueHourly) * 0.74).toBeCloseTo(20, 1);
});
