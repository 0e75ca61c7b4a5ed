import { expect, test } from "vitest";
import { cornerName, wallName } from "./corner-names.ts";

test("HALL-1: corners are A to Z, then AA, AB and on", () => {
  expect([0, 25, 26, 27, 51, 52].map(cornerName)).toEqual(["A", "Z", "AA", "AB", "AZ", "BA"]);
});

test("HALL-1: a wall has the names of its two corners, and the last comes back to A", () => {
  const triangle = [
    [0, 0],
    [4000, 0],
    [0, 3000],
  ] as const;
  expect([0, 1, 2].map((index) => wallName(triangle, index))).toEqual(["A–B", "B–C", "C–A"]);
});
