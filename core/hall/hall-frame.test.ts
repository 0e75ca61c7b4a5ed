import { expect, test } from "vitest";
import { hallFrame, wallInWords } from "./hall-frame.ts";
import { lShapedFloor, rectangleFloor } from "./floor-start.ts";
import { rectangleAt } from "./floor-shapes.ts";

const room = rectangleFloor(8000, 12_000);
const ell = lShapedFloor({ width: 10_000, depth: 8000, cutWidth: 4000, cutDepth: 3000 });

test("HALL-13: without a teacher the front is the top of the drawing, whichever way round it was drawn", () => {
  for (const outline of [room, room.toReversed()]) {
    expect(hallFrame({ outline, teacher: null })).toEqual({ front: [0, 1], right: [1, 0] });
  }
});

test("HALL-13: with the teacher at the bottom, the left is the right of the drawing", () => {
  const teacher = { outline: rectangleAt([0, 0], 8000, 2000) };
  const frame = hallFrame({ outline: room, teacher });
  expect(frame.front).toEqual([0, -1]);
  // A–B bottom, B–C right, C–D top, D–A left
  expect([0, 1, 2, 3].map((wall) => wallInWords(room, frame, wall))).toEqual([
    "the front wall",
    "the left wall",
    "the back wall",
    "the right wall",
  ]);
});

test("HALL-13: a wall that is not the outermost on its side goes by its corners", () => {
  const frame = hallFrame({ outline: ell, teacher: null });
  expect(ell.map((_, wall) => wallInWords(ell, frame, wall))).toEqual([
    "the back wall",
    "the right wall",
    "the wall C–D",
    "the wall D–E",
    "the front wall",
    "the left wall",
  ]);
});

test("HALL-13: on a turned floor the front is the wall that looks most to the top", () => {
  // 3-4-5: the wall from [4, 3] to [1, 7] m looks to the right and up, [4, 3] / 5; the one after to the left and up, [−3, 4] / 5
  const turned = [
    [0, 0],
    [4000, 3000],
    [1000, 7000],
    [-3000, 4000],
  ] as const;
  const { front } = hallFrame({ outline: turned, teacher: null });
  expect(front[0]).toBeCloseTo(-0.6, 12);
  expect(front[1]).toBeCloseTo(0.8, 12);
});
