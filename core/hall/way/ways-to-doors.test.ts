import { edgesOf, type Point, pointToSegment } from "#kernels/geometry";
import { rectangleOf } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import { doorSwing } from "../door-swing.ts";
import type { Hall } from "../hall.ts";
import { matPlan } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { clearWay } from "./clear-way.ts";
import { waysToDoors } from "./ways-to-doors.ts";

/** A door 0.90 m wide in the first wall, from 3.50 m on or as far as it goes. */
function withDoor(hall: Hall): Hall {
  const [[ax, ay] = [0, 0], [bx, by] = [0, 0]] = hall.outline;
  const hingeAt = Math.max(0, Math.min(3500, Math.floor(Math.hypot(bx - ax, by - ay)) - 900));
  const door = doorSwing(hall.outline, { wall: 0, hingeAt, width: 900, reaches: "on" });
  return { ...hall, keepClear: [...hall.keepClear, door] };
}

/** 8 × 12 m with a door in the bottom wall from x 3500 to 4400 */
const hall = withDoor(aHall());

test("HALL-46: a way is drawn from the middle of the mat to the door, straight where nothing is between", () => {
  const [way = []] = waysToDoors(hall, { mats: [{ centre: [4000, 8000], angle: 90 }] }, 900);
  expect(way[0]).toEqual([4000, 8000]);
  const [x, y] = way.at(-1) ?? [0, 0];
  // the middle of a way 0.90 m wide stands 0.45 m from the leaf when it touches it, to a cell's diagonal of 14 mm
  expect(y).toBeGreaterThan(430);
  expect(y).toBeLessThan(470);
  expect(x).toBeGreaterThan(3490);
  expect(x).toBeLessThan(4410);
  const length = way.slice(1).reduce((sum, at, index) => {
    const before = way[index] ?? at;
    return sum + Math.hypot(at[0] - before[0], at[1] - before[1]);
  }, 0);
  expect(length).toBeLessThan(7600);
});

test("HALL-46: round a row of mats the way bends and touches none of them", () => {
  const mats = [1100, 3130, 5160].map((x): PlacedMat => ({ centre: [x, 5000], angle: 0 }));
  const all = [...mats, { centre: [1100, 9000], angle: 90 } as PlacedMat];
  const way = waysToDoors(hall, { mats: all }, 900).at(-1) ?? [];
  // past the right-hand end of the row, which is at 5160 + 915 = 6075
  expect(Math.max(...way.map(([x]) => x))).toBeGreaterThan(6075 + 430);
  expect(nearest(way.slice(1), mats)).toBeGreaterThan(450 - 2 * 15);
});

/** From the line to the nearest mat, in millimetres, looked at every 20 mm. */
function nearest(line: readonly Point[], mats: readonly PlacedMat[]): number {
  const points = line.flatMap((to, index) => {
    const from = line[index - 1] ?? to;
    const pieces = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 20));
    return Array.from({ length: pieces + 1 }, (_, piece): Point => {
      const share = piece / pieces;
      return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    });
  });
  const edges = mats.flatMap((mat) => edgesOf(rectangleOf(mat, hall.mat)));
  return Math.min(...points.flatMap((at) => edges.map(([from, to]) => pointToSegment(at, from, to))));
}

test("HALL-46: a mat has a line exactly where it is not called stuck, on any hall", () => {
  assert(
    property(randomHalls(), constantFrom(300, 500, 900), (whole, width) => {
      const random = withDoor(whole);
      const plan = matPlan(random);
      const found = clearWay(random, plan, width);
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      const stuck = new Set(found.value.stuck.map((it) => it.mat));
      const lines = waysToDoors(random, plan, width);
      expect(lines.map((it) => it.length === 0)).toEqual(plan.mats.map((_, mat) => stuck.has(mat)));
    }),
    { numRuns: 12 },
  );
});
