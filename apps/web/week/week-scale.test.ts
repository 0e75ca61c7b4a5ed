import { expect, test } from "vitest";
import { weekScale, wrapped } from "./week-scale.ts";

test("seven columns fill the width, an hour is as high as any other", () => {
  const scale = weekScale({ from: 480, until: 1320 }, 748);
  // (748 − 48) ÷ 7 = 100 for each day, 4 of them a gap
  expect([scale.x(1), scale.x(7) + scale.column]).toEqual([52, 748]);
  expect(scale.y(600) - scale.y(540)).toBe(scale.y(1320) - scale.y(1260));
  expect(scale.hours).toEqual([8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22]);
});

test("a phone's columns have numbers only", () => {
  // (358 − 48) ÷ 7 = 44
  expect(weekScale({ from: 480, until: 1320 }, 358).named).toBe(false);
});

test("a name is wrapped by words, and what has no room is marked as cut", () => {
  expect(wrapped("5 Tuesday evening, mixed", 12, 3)).toEqual(["5 Tuesday", "evening,", "mixed"]);
  expect(wrapped("5 Tuesday evening, mixed", 12, 2)).toEqual(["5 Tuesday", "evening,…"]);
  expect(wrapped("5 Hartsmoor Baths", 9, 1)).toEqual(["5…"]);
  expect(wrapped("Hartsmoor", 5, 2)).toEqual(["Hart…"]);
});
