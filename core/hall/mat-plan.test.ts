import { checkPlaced } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { floorToFill, matPlan } from "./mat-plan.ts";

test("HALL-11: a room of 8 × 12 m with a teacher in front takes 24 mats with the usual gaps", () => {
  const strip: [number, number][] = [
    [0, 9.5],
    [8, 9.5],
    [8, 12],
    [0, 12],
  ];
  const plan = matPlan(aHall({ teacher: { outline: strip } }));
  // 9.5 − 0.5 = 9 m deep and 7 m wide. Across: ⌊(7 + 0.5) / 1.11⌋ = 6; deep: ⌊(9 + 0.3) / 2.13⌋ = 4; 24.
  // Turned: ⌊(7 + 0.3) / 2.13⌋ = 3; ⌊(9 + 0.5) / 1.11⌋ = 8; 24 too.
  expect(plan).toMatchObject({ count: 24, bound: 24, proven: true, axis: 0, arrangement: "lines" });
});

test("HALL-11: a floor too small for a mat and its gaps has an empty plan that is proven", () => {
  const closet: [number, number][] = [
    [0, 0],
    [1.5, 0],
    [1.5, 1.5],
    [0, 1.5],
  ];
  const plan = matPlan(aHall({ outline: closet }));
  expect(plan).toMatchObject({ count: 0, bound: 0, proven: true, mats: [] });
  expect(plan.setOut.sentences).toEqual(["There is no mat to set out."]);
});

test("HALL-11: every plan of a random hall is allowed, has as many mats as it says and never more than its bound", () => {
  assert(
    property(randomHalls(), (hall) => {
      const plan = matPlan(hall);
      expect(checkPlaced(floorToFill(hall), hall.mat, hall.gaps, plan.mats)).toEqual([]);
      expect(plan.mats.length).toBe(plan.count);
      expect(plan.bound).toBeGreaterThanOrEqual(plan.count);
      for (const { angle } of plan.mats) expect(angle >= 0 && angle < 180).toBe(true);
      expect(plan.axis >= 0 && plan.axis < 90).toBe(true);
    }),
  );
});
