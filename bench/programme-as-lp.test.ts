import { expect, it } from "vitest";
import { programmeAsLp } from "./programme-as-lp.ts";

it("writes bounds, equal rows, one-sided rows and rows between two bounds, and which columns are whole", () => {
  const text = programmeAsLp({
    columns: [
      { gain: 3, least: 0, most: 1, whole: true },
      { gain: -2, least: 1, most: Infinity },
    ],
    rows: [
      { least: 0, most: 0, columns: [0, 1], values: [1, -1] },
      { least: -1, most: 4, columns: [0, 1] },
      { least: -Infinity, most: 2, columns: [1], values: [-5] },
    ],
  });
  expect(text.split("\n")).toEqual([
    "Maximize",
    " gain: + 3 c0 - 2 c1",
    "Subject To",
    " r0: + 1 c0 - 1 c1 = 0",
    " l1: + 1 c0 + 1 c1 >= -1",
    " m1: + 1 c0 + 1 c1 <= 4",
    " m2: - 5 c1 <= 2",
    "Bounds",
    " 0 <= c0 <= 1",
    " c1 >= 1",
    "Generals",
    " c0",
    "End",
    "",
  ]);
});
