import { area, containsPoint, type Point } from "#kernels/geometry";
import { checkPlaced } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { rectangleAt } from "../floor-shapes.ts";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import { matInWords } from "../mat-in-words.ts";
import type { RoundMatPlan } from "./arrangement-types.ts";
import { quarters } from "./ring-set-out-types.ts";
import { roundCentre } from "./round-centre.ts";
import { roundMats } from "./round-mats.ts";

const square = aHall({
  outline: [
    [0, 0],
    [9, 0],
    [9, 9],
    [0, 9],
  ],
});

/** Sound halls of up to 80 m² with one axis to plan along, so that many plans take seconds. */
function smallHalls() {
  return randomHalls()
    .filter((hall) => area(hall.outline) < 80e6)
    .map((hall): Hall => (hall.axis === "auto" ? { ...hall, axis: 0 } : hall));
}

test("HALL-66: without a teacher’s zone rings lie around the most open point, of a square its middle", () => {
  const plan = roundMats(square);
  expect(plan.centre).toEqual([4500, 4500]);
  expect(plan.ringSetOut.sentences.slice(0, 2)).toEqual([
    "The centre: from corner C go 4.50 m along the front wall, then 4.50 m straight out from it.",
    // half the diagonal: 4.5 · √2 = 6.364
    "To check it: it lies 6.36 m from corner A and 6.36 m from corner B.",
  ]);
});

test("HALL-66: with a zone they lie around its centre, moved to whole centimetres from the wall", () => {
  const outline = rectangleAt([3.111, 9.333], 2, 1.5).map(([x, y]): [number, number] => [x, y]);
  const { centre, ringSetOut } = roundMats(aHall({ teacher: { outline } }));
  // its centre is (4111, 10083): from corner C at (8000, 12000) 3889 along the front wall and 1917 out
  expect(centre).toEqual([8000 - 3890, 12_000 - 1920]);
  expect(ringSetOut.centre.fromWall).toEqual({ wall: "the front wall", corner: "C", along: 3890, out: 1920 });
});

test("HALL-66: everyone has the feet to the centre, a string’s length from it, and no ring is nearer than asked", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const plan = roundMats(hall, { least: 1200 });
      let mat = 0;
      for (const { radius, marks } of plan.ringSetOut.rings) {
        expect(radius).toBeGreaterThanOrEqual(1200);
        expect(radius % 10).toBe(0);
        for (let place = 0; place < marks.length; place++) {
          const placed = plan.mats[mat++];
          const [x, y] = [
            (placed?.centre[0] ?? 0) - plan.centre[0],
            (placed?.centre[1] ?? 0) - plan.centre[1],
          ];
          expect(Math.hypot(x, y)).toBeCloseTo(radius + hall.mat.length / 2, 6);
          const towards = ((placed?.angle ?? 0) * Math.PI) / 180;
          expect(Math.abs(x * Math.sin(towards) - y * Math.cos(towards))).toBeLessThan(1e-6);
        }
      }
      expect(mat).toBe(plan.count);
      expect(checkPlaced(floorToFill(hall), hall.mat, hall.gaps, plan.mats)).toEqual([]);
    }),
    { numRuns: 3 },
  );
});

test("HALL-67: who lays the rings from centre, string and tape alone lays the same mats", () => {
  assert(
    property(smallHalls(), (hall: Hall) => {
      const plan = roundMats(hall);
      for (const [index, foot] of feetFromFigures(hall, plan).entries()) {
        const placed = plan.mats[index];
        const [x, y] = [(placed?.centre[0] ?? 0) - plan.centre[0], (placed?.centre[1] ?? 0) - plan.centre[1]];
        const share = 1 - hall.mat.length / 2 / Math.hypot(x, y);
        const exact = plan.ringSetOut.toTheCentimetre ? 1e-6 : 1;
        expect(Math.abs(plan.centre[0] + x * share - foot[0])).toBeLessThan(exact);
        expect(Math.abs(plan.centre[1] + y * share - foot[1])).toBeLessThan(exact);
        expect(containsPoint(hall.outline, foot)).toBe(true);
      }
    }),
    { numRuns: 3 },
  );
});

/** The middle of each foot end: the string turned from the quarter by the angle whose chord was measured. */
function feetFromFigures(hall: Hall, { ringSetOut, centre }: RoundMatPlan): readonly Point[] {
  const { front } = roundCentre(hall, undefined);
  const start = Math.atan2(front[1], front[0]);
  return ringSetOut.rings.flatMap(({ radius, marks }) =>
    marks.map(({ from, side, chord }): Point => {
      const turn = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
      // to the right is clockwise with y up
      const angle = start - (quarters.indexOf(from) * Math.PI) / 2 + (side === "left" ? turn : -turn);
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    }),
  );
}

test("HALL-67: a ring is told with its string, how far its marks are apart and each mat straight from a mark", () => {
  const { ringSetOut, count } = roundMats(square);
  expect(ringSetOut.sentences[3]).toMatch(
    /^Ring 1: \d+ mats on a string of \d\.\d\d m; its marks are \d\.\d\d m apart\. Straight from a mark: mat 1 (on|\d\.\d+ m to the (left|right) of) the (front|right|back|left) mark; /,
  );
  expect(ringSetOut.rings.reduce((sum, ring) => sum + ring.marks.length, 0)).toBe(count);
});

test("HALL-49: a mat in a ring is named by its ring and its place in it", () => {
  const plan = roundMats(
    aHall({
      outline: [
        [0, 0],
        [12, 0],
        [12, 12],
        [0, 12],
      ],
    }),
  );
  const [first] = plan.ringSetOut.rings;
  expect(matInWords(plan, 0)).toBe("mat 1 of ring 1");
  expect(matInWords(plan, first?.marks.length ?? 0)).toBe("mat 1 of ring 2");
});
