import { aHall, randomHalls } from "#testing";
import { assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import type { Hall } from "../hall.ts";
import { doorSwing } from "../door-swing.ts";
import { rectangleAt } from "../floor-shapes.ts";
import { matPlan } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { clearWay } from "./clear-way.ts";

/** A door 0.9 m wide in the wall at the bottom, from `at` on, in millimetres. */
function withDoor(hall: Hall, at = 3500): Hall {
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: at, width: 900, reaches: "on" });
  return { ...hall, keepClear: [...hall.keepClear, door] };
}

function answer(hall: Hall, mats: readonly PlacedMat[], width: number) {
  const found = clearWay(hall, { mats }, width);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function upright(...centres: [number, number][]): PlacedMat[] {
  return centres.map((centre) => ({ centre, angle: 90 }));
}

/** 8 × 12 m */
const hall = withDoor(aHall());

test("HALL-46: a lone mat has a way; a wall of mats shuts off the one behind it, and the mats in its way are named", () => {
  expect(answer(hall, upright([4000, 8000]), 900).clear).toBe(true);
  // across 8 m five mats lie 1.83 m long, end to end 0.2 m apart from the wall to 0.45 m before the other:
  // nowhere 0.9 m, so mat 4 (by index) is shut off
  const wall = [1100, 3130, 5160, 7000].map((x): PlacedMat => ({ centre: [x, 5000], angle: 0 }));
  const shut = answer(hall, [...wall, ...upright([4000, 9000])], 900);
  expect(shut.stuck.map((it) => it.mat)).toEqual([4]);
  expect(shut.blocking).toHaveLength(1);
  expect(shut.sentences[0]).toBe("1 of 5 mats has no way 0.90 m wide to a door: mat 5.");
  expect(shut.stuck[0]?.says).toMatch(/^mat 5: past mat [1-4]$/);
});

test("HALL-56: a door marked as no way out is not gone to, and with no other nothing is said of ways", () => {
  const [zone] = hall.keepClear;
  if (zone?.door === undefined) throw new Error("no door");
  const none: Hall = { ...hall, keepClear: [{ ...zone, door: { ...zone.door, wayOut: false } }] };
  const found = clearWay(none, { mats: upright([4000, 8000]) }, 900);
  expect(found.ok ? [] : found.problems.map((it) => [it.code, it.says.split(",")[0]])).toEqual([
    ["doors-missing", "Every door that is drawn is marked as no way out"],
  ]);
  const both = withDoor(
    { ...none, keepClear: none.keepClear.map((it) => ({ ...it, label: "Store" })) },
    6000,
  );
  expect(answer(both, upright([4000, 8000]), 900).doors).toEqual(["Door"]);
});

/** Screens across the whole hall but for a gap from x 3500 on. */
function shutter(gap: number): Hall {
  return {
    ...hall,
    fixtures: [
      { label: "Left screen", outline: rectangleAt([0, 6000], 3500, 100), movable: true },
      { label: "Right screen", outline: rectangleAt([3500 + gap, 6000], 4500 - gap, 100), movable: true },
    ],
  };
}

test("HALL-46: a gap as wide as the way lets through, one narrower by more than the resolution does not", () => {
  const behind = upright([4000, 9000]);
  expect(answer(shutter(900), behind, 900)).toMatchObject({ clear: true, resolution: 29 });
  const shut = answer(shutter(870), behind, 900);
  expect(shut.stuck).toEqual([
    { mat: 0, blockedBy: [], says: "mat 1: walls and fixtures leave no way so wide" },
  ]);
  expect(shut.sentences[1]).toBe("Walls and fixtures alone leave no way so wide for mat 1.");
});

test("HALL-46: the usual gap of 0.50 m between files is a way of 0.50 m and not one of 0.60 m", () => {
  const plan = matPlan(withDoor(aHall({ axis: 0 })));
  const found = clearWay(hall, plan, 500);
  expect(found.ok && found.value.clear).toBe(true);
  const wide = clearWay(hall, plan, 600);
  expect(wide.ok && wide.value.stuck.length).toBeGreaterThan(0);
});

test("HALL-46: her own mat is in nobody’s way but others’", () => {
  // in the corner, 0.2 m from both walls and with 0.3 m to a neighbour on each side that is open
  const [own, beside, before] = upright([505, 1115], [1415, 1115], [505, 3245]);
  if (own === undefined || beside === undefined || before === undefined) throw new Error("three mats");
  const found = answer(hall, [own, beside, before], 500);
  expect(found.stuck.map((it) => [it.mat, it.blockedBy.length])).toEqual([[0, 1]]);
});

test("HALL-46: without a door, or for a way of no sensible width, it is told what to do", () => {
  const mats = upright([4000, 8000]);
  const none = clearWay(aHall(), { mats }, 50);
  expect(none.ok ? [] : none.problems.map((it) => it.code)).toEqual(["way-width", "doors-missing"]);
  const odd = clearWay(hall, { mats }, Number.NaN);
  expect(odd.ok ? [] : odd.problems.map((it) => it.says)).toEqual(["The width of the way is not a number."]);
});

test("HALL-47: with the mats that block it taken up, a mat has its way; a narrower way is never shut where a wider is not", () => {
  assert(
    property(randomHalls(), constantFrom(400, 500, 900), (random, width) => {
      const withOne = doored(random);
      if (withOne === null) return;
      const { mats } = matPlan(withOne);
      const found = answer(withOne, mats, width);
      const narrow = new Set(answer(withOne, mats, width - 60).stuck.map((it) => it.mat));
      expect([...narrow].every((mat) => found.stuck.some((it) => it.mat === mat))).toBe(true);
      for (const { mat, blockedBy } of found.stuck.slice(0, 2)) {
        if (blockedBy.length === 0) continue;
        const left = mats.filter((_, index) => !blockedBy.includes(index));
        const stays = left.indexOf(mats[mat] ?? { centre: [0, 0], angle: 0 });
        expect(answer(withOne, left, width).stuck.some((it) => it.mat === stays)).toBe(false);
      }
    }),
    { numRuns: 6 },
  );
});

/** With a door in the middle of its longest wall; null where that is under 0.9 m. */
function doored(random: Hall): Hall | null {
  const lengths = random.outline.map(([x, y], index) => {
    const [nextX, nextY] = random.outline[(index + 1) % random.outline.length] ?? [x, y];
    return Math.hypot(nextX - x, nextY - y);
  });
  const wall = lengths.indexOf(Math.max(...lengths));
  const hingeAt = Math.round((lengths[wall] ?? 0) / 2 - 450);
  if (hingeAt < 0) return null;
  const door = doorSwing(random.outline, { wall, hingeAt, width: 900, reaches: "on" });
  return { ...random, keepClear: [...random.keepClear, door] };
}
