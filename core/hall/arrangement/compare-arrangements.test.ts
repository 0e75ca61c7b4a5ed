import { rectangleOf } from "#kernels/packing";
import { polygonDistance } from "#kernels/geometry";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { doorSwing } from "../door-swing.ts";
import { rectangleAt } from "../floor-shapes.ts";
import type { Hall } from "../hall.ts";
import { matPlan } from "../mat-plan.ts";
import { whoCannotSee } from "../sight/who-cannot-see.ts";
import { arrangements } from "./arrangement-types.ts";
import { compareArrangements } from "./compare-arrangements.ts";
import { leastBetween } from "./least-between.ts";
import { sightOptions } from "./sight-options.ts";

const strip = rectangleAt([0, 9.5], 8, 2.5).map(([x, y]): [number, number] => [x, y]);

test("HALL-68: each arrangement is told with count, proof, sight, gaps and the way out, in their order", () => {
  const hall = aHall({ teacher: { outline: strip } });
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 3500, width: 1000, reaches: "on" });
  const rows = [...compareArrangements({ ...hall, keepClear: [door] }, { steps: 4 })];
  expect(rows.map((row) => row.arrangement)).toEqual([...arrangements]);
  const [lines] = rows;
  // as in HALL-15: 6 across, 4 deep, 0.50 m between long sides; 0.78 m over, shared by the lines
  expect(lines?.sentences).toEqual([
    "24 mats in straight lines. No plan in straight lines has more.",
    expect.stringMatching(/^\d+ of 24 mats see the teacher past the people before them\.$/),
    expect.stringMatching(
      /^At least 0\.50 m between long sides and 0\.\d\d m between head and foot; the nearest two mats are 0\.\d\d m apart\.$/,
    ),
    expect.stringMatching(/(Every mat has a|mats? (has|have) no) way 0\.90 m wide to a door/),
  ]);
});

test("HALL-68: a plan that there is already is taken, and without a zone or a door it is said that nothing can be", () => {
  const hall = aHall();
  const made = { ...matPlan(hall), bound: 99, proven: false };
  const [lines] = compareArrangements(hall, { plans: [made] });
  expect(lines?.plan).toBe(made);
  expect(lines?.sentences.slice(0, 2)).toEqual([
    `${made.count} mats in straight lines. Not proven to be the most: at best 99 could fit in straight lines.`,
    "No place is drawn for the teacher, so nothing is said of who sees her.",
  ]);
  expect(lines?.sentences[3]).toBe("No door is drawn, so no way to one can be looked for.");
});

test("HALL-68: in two banks people look to the middle, in rings to the centre with their feet to it", () => {
  const hall = aHall();
  for (const row of compareArrangements(hall, { steps: 1 })) {
    const options = sightOptions(row.plan);
    if (row.plan.arrangement === "facing") expect(options.teacher).toEqual(row.plan.middle?.teacher);
    if (row.plan.arrangement === "round")
      expect(options).toEqual({ heads: "far", rowsTowards: "teacher", teacher: row.plan.centre });
    expect(row.sight === null).toBe(!["facing", "round"].includes(row.arrangement));
  }
});

test("HALL-41: told where the teacher stands, a hall without a zone has an answer too", () => {
  const one = { mats: [{ centre: [4000, 6000] as const, angle: 90 }] };
  expect(whoCannotSee(aHall(), one, { teacher: [4000, 11_000] })?.seeing).toBe(1);
});

test("HALL-69: gaps are measured from the mats themselves: beside, behind and between any two", () => {
  const hall = aHall();
  const mats = [
    { centre: [1000, 1000] as const, angle: 90 },
    // 1400 − 610 = 790 beside it
    { centre: [2400, 1100] as const, angle: 90 },
    // 2300 − 1830 = 470 behind the first
    { centre: [1000, 3300] as const, angle: 90 },
    // across, its long side 4400 − 3300 − 915 − 305 = −120 … so set at 4800: 280 behind the third
    { centre: [1000, 4800] as const, angle: 0 },
  ];
  expect(leastBetween(hall, mats)).toEqual({ side: 790, end: 470, any: 280 });
  expect(leastBetween(hall, mats.slice(0, 1))).toEqual({ side: null, end: null, any: null });
});

test("HALL-69: in lines the least gaps are those asked for or more, and the nearest two are found among all", () => {
  assert(
    property(randomHalls(), (hall: Hall) => {
      const { mats } = matPlan(hall);
      const { side, end, any } = leastBetween(hall, mats);
      if (side !== null) expect(side).toBeGreaterThanOrEqual(hall.gaps.side);
      if (end !== null) expect(end).toBeGreaterThanOrEqual(hall.gaps.end);
      const shapes = mats.map((it) => rectangleOf(it, hall.mat));
      const nearest = shapes.flatMap((one, index) =>
        shapes.slice(index + 1).map((other) => polygonDistance(one, other)),
      );
      if (any !== null) expect(any).toBe(Math.max(0, Math.floor(Math.min(...nearest) + 0.01)));
    }),
    { numRuns: 30 },
  );
});
