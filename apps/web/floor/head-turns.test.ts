import { rectangleFloor } from "#core/hall";
import { expect, test } from "vitest";
import { headTurns } from "./head-turns.ts";

const floor = { outline: rectangleFloor(8000, 10_000), teacher: null };

test("without a teacher among them all heads lie at the top, the front, and at the left where mats lie across", () => {
  const mats = [
    { centre: [2000, 3000], angle: 90 },
    { centre: [5000, 3000], angle: 0 },
  ] as const;
  expect(headTurns(mats, floor)).toEqual([0, 180]);
});

test("in two banks the heads lie towards the middle, in a ring away from it", () => {
  const mats = [
    { centre: [4000, 2000], angle: 90 },
    { centre: [4000, 8000], angle: 90 },
  ] as const;
  expect(headTurns(mats, floor, { teacher: [4000, 5000] })).toEqual([0, 180]);
  expect(headTurns(mats, floor, { teacher: [4000, 5000], heads: "far" })).toEqual([180, 0]);
});
