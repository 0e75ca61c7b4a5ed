import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { matPlan } from "./mat-plan.ts";
import { planInWords } from "./plan-in-words.ts";

function box(x: number, y: number, width: number, depth: number): [number, number][] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

test("HALL-19: the words say what the drawing shows", () => {
  const hall = aHall({
    teacher: { outline: box(0, 9.5, 8, 2.5) },
    fixtures: [{ label: "Piano", outline: box(7.2, 0.2, 0.6, 1.5), movable: true }],
    keepClear: [{ label: "Fire exit", outline: box(0, 5, 1, 1) }],
  });
  // 6 mats beside each other take 6 × 0.61 + 5 × 0.50 = 6.16 m: past the piano from 0.50 to 6.66, short of
  // 7.20 − 0.50 = 6.70; past the fire exit from 1.00 to 7.16, short of 7.50; so all 4 lines hold 6
  expect(planInWords(hall, matPlan(hall))).toBe(
    "Tithe Barn Hall, seen from above with the front at the top. " +
      "The floor is 96.0 m² between 4 walls: A–B 8.00 m, B–C 12.00 m, C–D 8.00 m, D–A 12.00 m. " +
      "The teacher’s zone is at the front. " +
      "On the floor: Piano (can be moved), at the back right. " +
      "Kept clear: Fire exit, at the left. " +
      "24 mats of 1.83 m by 0.61 m lie in 4 lines of 6, counted from the front wall, with the length front to back. " +
      "Between long sides there are at least 0.50 m, between head and foot 0.30 m, to walls and what stands on the floor 0.50 m. " +
      "No plan in straight lines has more.",
  );
});

test("HALL-19: a floor without room for a mat says so, in feet and inches for those who measure so", () => {
  const hall = aHall({ outline: box(0, 0, 1.5, 1.5) });
  const words = planInWords(hall, matPlan(hall), "feet");
  // 2.25 m² / 0.0929 = 24.2 square feet; 1500 / 25.4 = 59.06 in = 4 ft 11 in; 1830 is 72.05 in, 610 is 24.02 in
  expect(words).toContain("The floor is 24 square feet between 4 walls: A–B 4 ft 11 in,");
  expect(words.endsWith("No mat of 6 ft 0 in by 2 ft 0 in fits.")).toBe(true);
});

test("HALL-19: the walls of a curve are counted, not told one by one", () => {
  const drum = aHall({
    outline: Array.from({ length: 60 }, (_, wall): [number, number] => [
      6 * Math.cos((wall * Math.PI) / 30),
      6 * Math.sin((wall * Math.PI) / 30),
    ]),
    axis: 0,
  });
  // 60 triangles of ½ · 36 · sin 6° m² are 112.9 m²
  expect(planInWords(drum, matPlan(drum))).toContain(
    "The floor is 112.9 m² between 60 walls, many of them short.",
  );
});

test("HALL-19: the words of any hall name every fixture and the number of mats", () => {
  assert(
    property(randomHalls(), (hall) => {
      const plan = matPlan(hall);
      const words = planInWords(hall, plan);
      expect(words).not.toMatch(/undefined|NaN|Infinity/);
      expect(words).toContain(plan.count === 0 ? "No mat of" : `${plan.count} mat`);
      expect(words.split("Stacked chairs").length - 1).toBe(hall.fixtures.length);
    }),
    { numRuns: 50 },
  );
});
