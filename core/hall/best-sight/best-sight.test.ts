import { checkPlaced } from "#kernels/packing";
import { loadSolver, type Solver } from "#kernels/search";
import { aHall, randomHalls } from "#testing";
import { array, assert, integer, property, record, uniqueArray } from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { sightOptions } from "../arrangement/sight-options.ts";
import { setOutInWords } from "../arrangement/set-out-in-words.ts";
import { arrangedPlan } from "../arrangement/arranged-plan.ts";
import { arrangements } from "../arrangement/arrangement-types.ts";
import { rectangleAt } from "../floor-shapes.ts";
import type { Hall } from "../hall.ts";
import { floorToFill, matPlan } from "../mat-plan.ts";
import { whoCannotSee } from "../sight/who-cannot-see.ts";
import { type BestSight, bestSight } from "./best-sight.ts";
import { hiddenOf, leaveOut } from "./leave-out.ts";
import { slidLines } from "./slid-lines.ts";
import { thinnedPlan } from "./thinned-plan.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const strip = rectangleAt([0, 9.5], 8, 2.5).map(([x, y]): [number, number] => [x, y]);
const hall = aHall({ teacher: { outline: strip } });

function last(steps: Generator<BestSight, void, undefined>): BestSight {
  const all = [...steps];
  const end = all.at(-1);
  if (end === undefined) throw new Error("no plan was tried");
  return end;
}

test("HALL-72: of a plan the mats to leave out are chosen exactly, as trying every choice shows", () => {
  const cases = record({
    size: integer({ min: 2, max: 9 }),
    pairs: array(
      record({
        mat: integer({ min: 0, max: 8 }),
        behind: uniqueArray(integer({ min: 0, max: 8 }), { minLength: 1, maxLength: 3 }),
      }),
      { maxLength: 7 },
    ),
    share: integer({ min: 1, max: 9 }),
  });
  assert(
    property(cases, ({ size, pairs, share }) => {
      const hidden = [...new Map(pairs.filter((it) => it.mat < size).map((it) => [it.mat, it])).values()]
        .map((it) => ({ mat: it.mat, behind: it.behind.filter((other) => other < size && other !== it.mat) }))
        .filter((it) => it.behind.length > 0);
      const count = Math.max(1, Math.ceil((size * share) / 9));
      let fewest = Infinity;
      for (let choice = 0; choice < 2 ** size; choice++) {
        const kept = new Set([...Array(size).keys()].filter((mat) => ((choice >> mat) & 1) === 1));
        if (kept.size === count) fewest = Math.min(fewest, hiddenOf(hidden, kept));
      }
      const found = leaveOut(size, hidden, count, solver);
      expect(found).toMatchObject({ hidden: fewest, exact: true });
      expect(found.kept).toHaveLength(count);
      expect(hiddenOf(hidden, new Set(found.kept))).toBe(fewest);
      // without the solver the answer is no better, and never called exact unless nobody is hidden
      const plain = leaveOut(size, hidden, count, null);
      expect(plain.hidden).toBeGreaterThanOrEqual(fewest);
      if (plain.exact && count < size) expect(plain.hidden).toBe(0);
    }),
    { numRuns: 60 },
  );
});

test("HALL-72: lines slid along themselves hide no more than before, keep their mats and stay allowed", () => {
  assert(
    property(randomHalls(), (random: Hall) => {
      const plan = matPlan(random);
      const slid = slidLines(random, plan);
      expect(slid.count).toBe(plan.count);
      expect(checkPlaced(floorToFill(random), random.mat, random.gaps, slid.mats)).toEqual([]);
      const [before, after] = [whoCannotSee(random, plan), whoCannotSee(random, slid)];
      if (before !== null) expect(after?.hidden.length).toBeLessThanOrEqual(before.hidden.length);
      expect(slid.setOut.lines.reduce((sum, line) => sum + line.centres.length, 0)).toBe(plan.count);
    }),
    { numRuns: 5 },
  );
});

test("HALL-73: a plan with mats left out has a set-out of those that stay, in every arrangement", () => {
  for (const arrangement of arrangements) {
    const plan = arrangedPlan(hall, arrangement, { steps: 2 });
    const kept = [...plan.mats.keys()].filter((mat) => mat % 3 !== 1);
    const thinned = thinnedPlan(hall, plan, kept);
    expect(thinned.arrangement).toBe(arrangement);
    expect(thinned.mats).toHaveLength(kept.length);
    const wanted = kept.map((mat) => plan.mats[mat]?.centre);
    expect(new Set(thinned.mats.map((it) => it.centre))).toEqual(new Set(wanted));
    expect(thinned.bound).toBe(plan.bound);
    const told = setOutInWords(thinned).join(" ");
    expect(told).not.toBe(setOutInWords(plan).join(" "));
    if (arrangement === "most") expect(told).toMatch(new RegExp(`\\b${kept.length} lies?\\b`));
  }
});

test("HALL-72: in a hall of 8 × 12 m, 24 mats in lines hide more than the plan found; 12 all see", () => {
  const lines = whoCannotSee(hall, matPlan(hall));
  const found = last(bestSight(hall, 24, solver, { arrangement: "lines" }));
  expect(found.best?.plan.count).toBe(24);
  expect(found.best?.sight.hidden.length).toBeLessThan(lines?.hidden.length ?? 0);
  expect(found.sentences[0]).toMatch(
    /^From \d+ of 24 mats the teacher is not seen, in straight lines.*: the fewest of \d+ plans tried, which does not prove that there is no better one\.$/,
  );
  // of four rows of six, two suffice
  const twelve = last(bestSight(hall, 12, solver, { arrangement: "lines" }));
  expect(twelve).toMatchObject({
    proven: true,
    sentences: ["From all 12 mats the teacher is seen, in straight lines."],
  });
  expect(twelve.best?.plan.mats).toHaveLength(12);
});

test("HALL-72: what is found has as many mats as asked for, is allowed, and its sight is counted from its own mats", () => {
  assert(
    property(randomHalls(), integer({ min: 1, max: 10 }), (random: Hall, tenths: number) => {
      const count = Math.max(1, Math.floor((matPlan(random).count * tenths) / 10));
      let before = Infinity;
      for (const { best } of bestSight(random, count, solver, { arrangement: "lines" })) {
        if (best === null) continue;
        expect(best.plan.mats).toHaveLength(count);
        expect(checkPlaced(floorToFill(random), random.mat, random.gaps, best.plan.mats)).toEqual([]);
        expect(best.sight).toEqual(whoCannotSee(random, best.plan, sightOptions(best.plan)));
        expect(best.sight.hidden.length).toBeLessThanOrEqual(before);
        before = best.sight.hidden.length;
      }
    }),
    { numRuns: 6 },
  );
});

test("HALL-72: more mats than fit, and lines without a place for the teacher, have no plan and say why", () => {
  const none = last(bestSight(hall, 900, solver, { arrangement: "staggered" }));
  expect(none.best).toBeNull();
  expect(none.sentences).toEqual([`No plan of 900 mats was found among ${none.of} plans tried.`]);
  const unknown = aHall();
  expect(last(bestSight(unknown, 4, solver, { arrangement: "lines" })).sentences).toEqual([
    "No plan of 4 mats was found among 0 plans tried.",
    "Until a place is drawn for the teacher, who sees her is only known in two banks and in rings.",
  ]);
  expect(last(bestSight(unknown, 900, solver, { arrangement: "facing" })).sentences).toEqual([
    "No plan of 900 mats was found among 1 plan tried.",
    "Until a place is drawn for the teacher, who sees her is only known in two banks and in rings.",
  ]);
  expect(() => bestSight(hall, 0, solver).next()).toThrow("not a number of mats: 0");
});
