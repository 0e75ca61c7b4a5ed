import { moneyAnswer } from "#core/cash";
import { expect, test } from "vitest";
import { monthPoints } from "./month-points.ts";

test("the line goes through the opening balance, each month's lowest day and its end", () => {
  const read = moneyAnswer({
    currency: "GBP",
    from: "2027-01-01",
    months: 2,
    opening: "100",
    moves: [
      { name: "hall", way: "out", amount: "80", on: "2027-01-11" },
      { name: "takings", way: "in", amount: { low: "30", middle: "50", high: "90" }, on: "2027-01-20" },
      { name: "hall", way: "out", amount: "60", on: "2027-02-01" },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const points = monthPoints(read.value.json);
  // the 11th lies 10 of 31 days in; the 1st of February where its month begins
  expect(points.middle).toEqual([
    { x: 0, y: 100 },
    { x: 10 / 31, y: 20 },
    { x: 1, y: 70 },
    { x: 1, y: 10 },
    { x: 2, y: 10 },
  ]);
  expect(points.low.at(-1)).toEqual({ x: 2, y: -10 });
  expect(points.lowest).toEqual({ x: 1, y: 10 });
});
