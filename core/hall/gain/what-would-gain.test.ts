import { checkPlaced } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import type { Hall } from "../hall.ts";
import { hallToDocument } from "../hall-to-document.ts";
import { floorToFill, matPlan } from "../mat-plan.ts";
import { readHall } from "../read-hall.ts";
import { rectangleAt } from "../floor-shapes.ts";
import { changesToTry } from "./changes-to-try.ts";
import { byGain, whatWouldGain } from "./what-would-gain.ts";

function rectangle(x: number, y: number, width: number, depth: number): [number, number][] {
  return rectangleAt([x, y], width, depth).map(([right, up]) => [right, up]);
}

const teacher = { outline: rectangle(0, 9.5, 8, 2.5) };

test("HALL-42: a hall of 8 × 12 m gains 4 mats from 5 cm between long sides, and 3 from half the teacher’s zone", () => {
  const hall = aHall({ teacher, axis: 0 });
  const gains = [...whatWouldGain(hall, matPlan(hall), matPlan)];
  // now: 7 m × 9 m of floor; ⌊7.5/1.11⌋ = 6 by ⌊9.3/2.13⌋ = 4, or turned ⌊7.3/2.13⌋ = 3 by ⌊9.5/1.11⌋ = 8; 24.
  // side 0.45: ⌊7.45/1.06⌋ = 7 by 4 is 28. End 0.25: 6 by ⌊9.25/2.08⌋ = 4; 3 by 8; 24.
  // wall 0.40, so 7.2 by 9.1 m: ⌊7.7/1.11⌋ = 6 by ⌊9.4/2.13⌋ = 4; ⌊7.5/2.13⌋ = 3 by ⌊9.6/1.11⌋ = 8; 24.
  // the length left to right, as counted above: 24.
  // half for the teacher, so 10.25 m deep: 6 by ⌊10.55/2.13⌋ = 4; turned 3 by ⌊10.75/1.11⌋ = 9 is 27.
  expect(gains.map((it) => it.sentence)).toEqual([
    "5 cm less between long sides (0.45 m): 28 mats, 4 more.",
    "5 cm less between head and foot (0.25 m): 24 mats, no more than now.",
    "10 cm less from the walls (0.40 m): 24 mats, no more than now.",
    "Mats turned, their length left to right: 24 mats, no more than now.",
    "Half the depth for the teacher (1.25 m): 27 mats, 3 more.",
  ]);
  expect(byGain(gains).map((it) => it.gain)).toEqual([4, 3, 0, 0, 0]);
});

test("HALL-42: a movable fixture is tried gone, one that is not stays; both are told apart by place", () => {
  const hall = aHall({
    fixtures: [
      { label: "Chairs", outline: rectangle(0, 0, 2, 2), movable: true },
      { label: "Stove", outline: rectangle(6, 6, 1, 1) },
      { label: "Chairs", outline: rectangle(6, 10, 2, 2), movable: true },
    ],
  });
  const gone = changesToTry(hall).trials.filter((it) => it.change.kind === "fixture gone");
  expect(gone.map((it) => it.says)).toEqual([
    "Without “Chairs” (at the back left)",
    "Without “Chairs” (at the front right)",
  ]);
  expect(gone.map((it) => it.hall.fixtures.map((left) => left.label))).toEqual([
    ["Stove", "Chairs"],
    ["Chairs", "Stove"],
  ]);
});

test("HALL-43: no gap goes below what is called close, nor a wall gap below 0.30 m, and it is said", () => {
  const close = changesToTry(aHall({ gaps: { side: 0.34, end: 0.25, wall: 0.39 } }));
  // 0.34 − 0.05 = 0.29 < 0.30; 0.25 − 0.05 = 0.20 is just allowed; 0.39 − 0.10 = 0.29 < 0.30
  expect(close.trials.map((it) => it.change)).toEqual([{ kind: "end gap", from: 250, to: 200 }]);
  expect(close.leftOut).toEqual([
    "Less than 0.34 m between long sides was not tried: the least is 0.30 m.",
    "Less than 0.39 m from the walls was not tried: the least is 0.30 m.",
    "The plan was not turned: every wall direction is tried already.",
  ]);
});

test("HALL-42: a plan with a stated axis is tried along the other walls, once for walls that are square", () => {
  // walls at 0°, 90° and one at 45°
  const bay: [number, number][] = [
    [0, 0],
    [8, 0],
    [8, 10],
    [6, 12],
    [0, 12],
  ];
  const trials = (axis: number) =>
    changesToTry(aHall({ outline: bay, axis })).trials.flatMap(({ change }) =>
      change.kind === "axis" ? [change.degrees] : [],
    );
  expect(trials(90)).toEqual([45]);
  expect(trials(10)).toEqual([0, 45]);
});

test("HALL-42: mats turned lie at a right angle to how they lay, all of them, and the way they lay is the better one", () => {
  assert(
    property(randomHalls(), (hall: Hall) => {
      const plan = matPlan(hall);
      const [first] = plan.mats;
      if (first === undefined) return;
      const trial = changesToTry(hall, "metric", plan).trials.find((it) => it.change.kind === "mats turned");
      if (trial === undefined) throw new Error("no mats were turned");
      const turned = matPlan(trial.hall);
      for (const mat of turned.mats)
        expect(Math.abs(Math.abs(mat.angle - first.angle) - 90)).toBeLessThan(1e-6);
      const kept = matPlan({ ...hall, lengthAlong: first.angle });
      if (kept.proven && plan.proven) expect(kept.count).toBe(plan.count);
      if (turned.proven && plan.proven) expect(turned.count).toBeLessThanOrEqual(plan.count);
    }),
    { numRuns: 40 },
  );
});

test("HALL-42: in a corridor 3.2 m wide mats turned across it are 8, lengthwise 2; nothing is turned in a ring", () => {
  const corridor = aHall({ outline: rectangle(0, 0, 3.2, 9.4) });
  // 2.2 by 8.4 m: across ⌊8.9 / 1.11⌋ = 8 of 1.83 m; along ⌊2.7 / 1.11⌋ = 2 by ⌊8.7 / 2.13⌋ = 4 is 8 too
  const plan = matPlan(corridor);
  const narrow = aHall({ outline: rectangle(0, 0, 2.9, 9.4) });
  // 1.9 m: across 8, along ⌊2.4 / 1.11⌋ = 2 by 4 is 8; 2.6 m wide, 1.6 m left: only along, ⌊2.1 / 1.11⌋ = 1 by 4
  const thin = aHall({ outline: rectangle(0, 0, 2.6, 9.4) });
  expect([plan.count, matPlan(narrow).count, matPlan(thin).count]).toEqual([8, 8, 4]);
  const turned = [...whatWouldGain(thin, matPlan(thin), matPlan)].find(
    (it) => it.change.kind === "mats turned",
  );
  expect(turned?.sentence).toBe("Mats turned, their length left to right: 0 mats, 4 fewer.");
  const ring = { ...plan, arrangement: "round" as const };
  expect(changesToTry(corridor, "metric", ring).trials.some((it) => it.change.kind === "mats turned")).toBe(
    false,
  );
});

test("HALL-42: a zone that one cut would break in two is left out and said", () => {
  // a U open to the front: its front half is two pieces
  const u: [number, number][] = [
    [1, 8],
    [7, 8],
    [7, 11],
    [5, 11],
    [5, 9],
    [3, 9],
    [3, 11],
    [1, 11],
  ];
  const { trials, leftOut } = changesToTry(aHall({ teacher: { outline: u } }));
  expect(trials.some((it) => it.change.kind === "teacher halved")).toBe(false);
  expect(leftOut.at(-1)).toBe("The teacher’s zone has a shape that cannot be halved by one cut.");
});

test("HALL-42: an unproven plan says how many there might be, and one step solves one hall", () => {
  const hall = aHall({ teacher });
  let solved = 0;
  const steps = whatWouldGain(hall, { count: 24, bound: 24, proven: true }, () => {
    solved++;
    return { count: 23, bound: 26, proven: false };
  });
  expect(steps.next().value?.sentence).toBe(
    "5 cm less between long sides (0.45 m): 23 mats, 1 fewer, perhaps up to 26.",
  );
  expect(solved).toBe(1);
});

test("HALL-43: every changed hall is sound, its plan is allowed there, and more room loses no mat of a proven plan", () => {
  assert(
    property(randomHalls(), (hall: Hall) => {
      const plan = matPlan(hall);
      for (const { hall: changed, plan: other, gain, change } of whatWouldGain(hall, plan, matPlan)) {
        expect(readHall(hallToDocument(changed, {}))).toEqual({ ok: true, value: changed });
        expect(checkPlaced(floorToFill(changed), changed.mat, changed.gaps, other.mats)).toEqual([]);
        expect(other.count - plan.count).toBe(gain);
        if (!plan.proven || !other.proven) continue;
        // the plan lies the better way round already
        if (change.kind === "mats turned") expect(gain).toBeLessThanOrEqual(0);
        else if (change.kind !== "axis") expect(gain).toBeGreaterThanOrEqual(0);
      }
    }),
    { numRuns: 30 },
  );
});
