import { pointToSegment } from "#kernels/geometry";
import { aHall, randomHalls } from "#testing";
import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { centroidOf } from "../centroid-of.ts";
import { matPlan } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { whoCannotSee } from "./who-cannot-see.ts";

/** Its centre is [4, 10.75]. */
const strip: [number, number][] = [
  [0, 9.5],
  [8, 9.5],
  [8, 12],
  [0, 12],
];
const hall = aHall({ teacher: { outline: strip } });

/** Mats with their heads to the front, 1.83 m long: a centre of 8000 puts the head at 8915. */
function standing(...centres: [number, number][]): { mats: PlacedMat[] } {
  return { mats: centres.map((centre) => ({ centre, angle: 90 })) };
}

test("HALL-41: who stands straight behind somebody does not see the teacher", () => {
  const sight = whoCannotSee(hall, standing([4000, 8000], [4000, 5870]));
  expect(sight).toEqual({
    seeing: 1,
    hidden: [{ mat: 1, behind: [0], says: "mat 2 is behind mat 1" }],
    sentences: ["1 of 2 mats sees the teacher past the people before them.", "Behind somebody: mat 2."],
  });
});

test("HALL-41: half a pitch to the side is enough to look past a person 0.25 m either way, 0.54 m is not", () => {
  // from (4555, 6785) to (4000, 10 750): at y 8915 the line is at 4555 − 555 · 2130/3965 = 4256.9, so 256.9 beside
  // the person and, square to the line, 256.9 · 3965/4003.7 = 254.4 away: past 250. From 4540: 249.6 · 3965/4001.6 = 247.3.
  expect(whoCannotSee(hall, standing([4000, 8000], [4555, 5870]))?.hidden).toEqual([]);
  expect(whoCannotSee(hall, standing([4000, 8000], [4540, 5870]))?.hidden).toMatchObject([{ mat: 1 }]);
});

test("HALL-41: two rows before her are looked past, a third is not counted", () => {
  // pitch 1830 + 300 = 2130: heads at 8915, 4655 (two rows behind) and 2525 (three)
  const sight = whoCannotSee(hall, standing([4000, 8000], [4000, 3740], [4000, 1610]));
  expect(sight?.hidden.map(({ mat, behind }) => [mat, behind])).toEqual([
    [1, [0]],
    [2, [1]],
  ]);
});

test("HALL-41: a neighbour in the same row stands in the way of a look sideways", () => {
  const corner: [number, number][] = [
    [0, 10.9],
    [1, 10.9],
    [1, 11.1],
    [0, 11.1],
  ];
  // the teacher at (500, 11 000); heads at 10 915: from (7000, 10 915) she is hidden by the one at (5890, 10 915),
  // whom the line passes at 85 · 1110/6500 = 14.5 mm
  const beside = whoCannotSee(
    aHall({ teacher: { outline: corner } }),
    standing([5890, 10_000], [7000, 10_000]),
  );
  expect(beside?.hidden).toMatchObject([{ mat: 1, behind: [0] }]);
});

test("HALL-41: without a teacher’s zone there is nothing to say", () => {
  expect(whoCannotSee(aHall(), standing([4000, 8000], [4000, 5870]))).toBeNull();
  expect(whoCannotSee(hall, { mats: [] })?.sentences).toEqual([
    "There is no mat that could see the teacher.",
  ]);
});

test("HALL-41: a plan in lines names line and place as its set-out does", () => {
  const plan = matPlan(hall);
  const sight = whoCannotSee(hall, plan);
  // 6 across and 4 deep; in the first row the way is free
  expect(plan.setOut.lines[0]?.centres.length).toBe(6);
  expect(sight?.seeing).toBeGreaterThanOrEqual(6);
  expect(sight?.hidden[0]?.says).toMatch(/^mat \d of line [234] is behind mats? \d of line [123]$/);
  expect(sight?.sentences.at(-1)).toBe(
    "Lines are counted from the front wall, the mats of each from the left wall.",
  );
});

test("HALL-41: of two ends equally near the left one is the head; feet to the teacher turn the mats about", () => {
  // across the hall in its middle: ends at 3085 and 4915; the person before at (3085, 8000) hides only the left one
  const across = { centre: [4000, 6000], angle: 0 } as const;
  const before = { centre: [3200, 8000 - 915], angle: 90 } as const;
  // from (3085, 6000) to (4000, 10 750): at y 8000 the line is at 3085 + 915 · 2000/4750 = 3470.3: 270.3 from 3200
  // square to it 270.3 · 4750/4837.3 = 265.4, so a person of 270 hides her and one of 260 does not
  expect(whoCannotSee(hall, { mats: [across, before] }, { radius: 270 })?.hidden).toMatchObject([{ mat: 0 }]);
  expect(whoCannotSee(hall, { mats: [across, before] }, { radius: 260 })?.hidden).toEqual([]);
  // feet to her: heads at 5085 and 2955, one file, still one behind the other
  const feet = whoCannotSee(hall, standing([4000, 6000], [4000, 3870]), {
    heads: "far",
    rowsTowards: "teacher",
  });
  expect(feet?.hidden).toMatchObject([{ mat: 1, behind: [0] }]);
});

test("HALL-41: every mat sees or is hidden, a broader person hides no fewer, and only people on the line hide", () => {
  assert(
    property(randomHalls(), integer({ min: 1, max: 400 }), (random, radius) => {
      const plan = matPlan(random);
      const sight = whoCannotSee(random, plan, { radius });
      if (random.teacher === null) return sight === null;
      const narrow = whoCannotSee(random, plan, { radius: radius / 2 });
      const all = sight?.hidden ?? [];
      expect((sight?.seeing ?? 0) + all.length).toBe(plan.count);
      const hidden = new Set(all.map((it) => it.mat));
      expect(narrow?.hidden.every((it) => hidden.has(it.mat))).toBe(true);
      // a person's point is half a mat from its centre, so nobody further than that and the radius can hide
      const teacher = centroidOf(random.teacher.outline);
      const reach = random.mat.length + radius;
      for (const { mat, behind } of all)
        for (const other of behind) {
          const [eye, person] = [plan.mats[mat]?.centre, plan.mats[other]?.centre];
          if (eye === undefined || person === undefined) throw new Error("a mat that is not in the plan");
          expect(pointToSegment(person, eye, teacher)).toBeLessThanOrEqual(reach);
        }
      return true;
    }),
    { numRuns: 60 },
  );
});
