import { area } from "#kernels/geometry";
import { areaBound, checkPlaced } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { rectangleAt } from "../floor-shapes.ts";
import type { Hall } from "../hall.ts";
import { floorToFill, matPlan } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { arrangedPlan } from "./arranged-plan.ts";
import { arrangements } from "./arrangement-types.ts";
import { facingMats } from "./facing-mats.ts";
import { planWorking } from "./plan-working.ts";
import { setOutInWords } from "./set-out-in-words.ts";
import { staggeredMats } from "./staggered-mats.ts";

/** Sound halls of up to 80 m² with one axis to plan along, so that many plans take seconds. */
function smallHalls() {
  return randomHalls()
    .filter((hall) => area(hall.outline) < 80e6)
    .map((hall): Hall => (hall.axis === "auto" ? { ...hall, axis: 0 } : hall));
}

test("HALL-60: a plan of any arrangement is allowed, has no more mats than its bound, and is proven where they meet", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const most = areaBound(floorToFill(hall), hall.mat, hall.gaps);
      for (const arrangement of arrangements) {
        const plan = arrangedPlan(hall, arrangement, { steps: 6 });
        expect(plan.mats).toHaveLength(plan.count);
        expect(checkPlaced(floorToFill(hall), hall.mat, hall.gaps, plan.mats)).toEqual([]);
        expect(plan.bound).toBeGreaterThanOrEqual(plan.count);
        expect(plan.proven).toBe(plan.bound === plan.count);
        expect(plan.count).toBeLessThanOrEqual(most);
      }
    }),
    { numRuns: 3 },
  );
});

test("HALL-61: staggered and facing lines are lines, so the bound of the lines holds for both; most holds the lines", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const lines = matPlan(hall);
      const most = arrangedPlan(hall, "most", { steps: 6 });
      expect(arrangedPlan(hall, "staggered").count).toBeLessThanOrEqual(lines.bound);
      expect(arrangedPlan(hall, "facing").count).toBeLessThanOrEqual(lines.bound);
      expect(most.count).toBeGreaterThanOrEqual(lines.count);
      expect(most.bound).toBeGreaterThanOrEqual(lines.count);
    }),
    { numRuns: 15 },
  );
});

test("HALL-62: the places of every other line lie half a pitch aside, to the centimetre, whatever is rounded", () => {
  const hall = aHall();
  const plan = staggeredMats(hall);
  // 7 m across: a line from 0 holds ⌊(7 + 0.5) / 1.11⌋ = 6, the shifted one ⌊(7 − 0.555 + 0.5) / 1.11⌋ = 6 too;
  // 11 m deep hold ⌊11.3 / 2.13⌋ = 5 lines of 6
  expect(plan.count).toBe(30);
  expect(plan.proven).toBe(true);
  const { lines, toTheCentimetre } = plan.setOut;
  expect(toTheCentimetre).toBe(true);
  expect([plan.pitch, plan.shift]).toEqual([1110, 555]);
  for (const [index, line] of lines.slice(1).entries()) {
    const aside = Math.abs(line.first - (lines[index]?.first ?? 0)) % plan.pitch;
    expect(Math.abs(aside - 555)).toBeLessThanOrEqual(10);
  }
});

test("HALL-62: nobody lies straight behind a neighbour in the line before", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const { mats, setOut } = staggeredMats(hall);
      let at = 0;
      const lines = setOut.lines.map((line) => mats.slice(at, (at += line.centres.length)));
      for (const [index, line] of lines.slice(1).entries())
        for (const mat of line)
          for (const before of lines[index] ?? []) {
            if (asideOf(hall, mat, before).behind)
              expect(asideOf(hall, mat, before).aside).toBeGreaterThan(hall.mat.width / 2 - 10);
          }
    }),
    { numRuns: 15 },
  );
});

/** How far a mat's centre lies beside another's, square to its length, and whether it is the next line's. */
function asideOf({ mat, gaps }: Hall, one: PlacedMat, two: PlacedMat) {
  const radians = (one.angle * Math.PI) / 180;
  const [x, y] = [one.centre[0] - two.centre[0], one.centre[1] - two.centre[1]];
  const along = Math.abs(x * Math.cos(radians) + y * Math.sin(radians));
  const aside = Math.abs(y * Math.cos(radians) - x * Math.sin(radians));
  return { aside, behind: along > mat.length && along < 2 * mat.length + gaps.end };
}

test("HALL-63: two banks leave the middle clear, told by the lines it lies between", () => {
  const plan = facingMats(aHall());
  // rows of 6 across 7 m. Of 11 m the middle takes 2: 9 m hold banks of 2 and 2 lines: 3.96 + 3.96 = 7.92, or of 1 and
  // 3: 1.83 + 6.09 = 7.92; 4 lines of 6 are 24. Files: 7 − 2 = 5 m hold 1.83 + 1.83, two files of ⌊11.5 / 1.11⌋ = 10: 20.
  expect(plan.count).toBe(24);
  expect(plan.setOut.lines).toHaveLength(4);
  const { middle } = plan;
  const before = plan.setOut.lines[(middle?.afterLine ?? 0) - 1];
  const after = plan.setOut.lines[middle?.afterLine ?? 0];
  expect((before?.from ?? 0) + 1830).toBeLessThanOrEqual(middle?.from ?? 0);
  expect(after?.from).toBeGreaterThanOrEqual((middle?.from ?? 0) + 2000);
  expect(middle?.teacher[0]).toBe(4000);
  expect(setOutInWords(plan).at(-1)).toMatch(
    /^Between line \d and line \d the middle stays clear, from \d+\.\d\d m to \d+\.\d\d m from the front wall; heads lie towards it\.$/,
  );
});

test("HALL-63: the middle is as wide as asked in any hall and no mat lies in it", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const { middle, mats } = facingMats(hall, { middle: 1500 });
      if (middle === null) {
        expect(mats).toEqual([]);
        return;
      }
      const zones = [...floorToFill(hall).keepClear, middle.outline];
      expect(checkPlaced({ ...floorToFill(hall), keepClear: zones }, hall.mat, hall.gaps, mats)).toEqual([]);
      expect(area(middle.outline) / longest(middle.outline)).toBeCloseTo(1500, 6);
      expect(middle.afterLine).toBeGreaterThan(0);
    }),
    { numRuns: 15 },
  );
});

function longest(outline: readonly (readonly [number, number])[]): number {
  const [a = [0, 0], b = a, c = b] = outline;
  return Math.max(Math.hypot(a[0] - b[0], a[1] - b[1]), Math.hypot(b[0] - c[0], b[1] - c[1]));
}

test("HALL-60: how a plan came about is told in whole sentences, the proof last", () => {
  const hall = aHall({ fixtures: [{ label: "Pillar", outline: square(3.8, 5.8, 0.4) }] });
  for (const arrangement of arrangements) {
    const working = planWorking(hall, arrangedPlan(hall, arrangement, { steps: 2 }));
    expect(working[0]).toBe(
      "A mat of 1.83 m by 0.61 m, at least 0.50 m between long sides, 0.30 m between head and foot and 0.50 m from walls and what stands on the floor.",
    );
    expect(working.at(-1)).toMatch(
      /^(No plan .* has more|Not proven to be the most: at best \d+ could fit .*)\.$/,
    );
    expect(working.length).toBeGreaterThanOrEqual(3);
  }
});

function square(x: number, y: number, side: number): [number, number][] {
  return rectangleAt([x, y], side, side).map(([right, up]) => [right, up]);
}

test("HALL-60: a floor without room for a mat has a plan of none in every arrangement, and says so", () => {
  const cupboard = aHall({ outline: square(0, 0, 2) });
  // 2 m less 0.50 m at each wall leave 1 m, too little for 1.83 m
  for (const arrangement of arrangements) {
    const plan = arrangedPlan(cupboard, arrangement);
    expect([plan.count, plan.mats]).toEqual([0, []]);
    expect(setOutInWords(plan)).toEqual(["There is no mat to set out."]);
  }
});

test("HALL-63: a bank packed between wall and middle to less than a centimetre is laid whole: the middle moves on", () => {
  // found among random halls: from the left 0.50 m of wall, one file of 1.73 m and the middle to 4.23 m leave nothing,
  // while the wall of the fixture in the corner is at 0.339 m
  const hall = aHall({
    outline: [
      [0, 5.05],
      [11.61, 5.05],
      [11.61, 4.03],
      [15.56, 4.03],
      [15.56, 0],
      [0, 0],
    ],
    fixtures: [
      { label: "Chairs", outline: box(-0.339, -0.878, 0.678, 1.756) },
      { label: "Table", outline: box(-0.341, -0.287, 0.681, 0.574) },
    ],
    mat: { length: 1.73, width: 0.61 },
    axis: 0,
  });
  const plan = facingMats(hall);
  expect(plan.setOut.toTheCentimetre).toBe(true);
  expect((plan.middle?.from ?? 1) % 10).toBe(0);
});

test("HALL-62: lines packed against a fixture at the back go back to the centimetre before, all of them", () => {
  const hall = aHall({
    outline: [
      [0, 0],
      [13.48, 0],
      [13.48, 17.93],
      [0, 17.93],
    ],
    fixtures: [
      { label: "Stove", outline: box(-0.889, -0.054, 1.778, 0.108) },
      { label: "Logs", outline: box(-1, -0.773, 1.999, 1.546) },
    ],
    gaps: { side: 0.9, end: 0.9, wall: 0.5 },
    axis: 0,
  });
  // the last line lies 0.773 + 0.50 = 1.273 m from the back, 16.657 − 1.83 = 14.827 m from the front: 14.82 is free
  const { setOut } = staggeredMats(hall);
  expect(setOut.toTheCentimetre).toBe(true);
  expect(setOut.lines.at(-1)?.from).toBe(14_820);
});

function box(x: number, y: number, width: number, depth: number): [number, number][] {
  return rectangleAt([x, y], width, depth).map(([right, up]) => [right, up]);
}
