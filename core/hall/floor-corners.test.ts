import { expect, test } from "vitest";
import { addCorner, moveCorner, removeCorner } from "./floor-corners.ts";
import { floorDraft } from "./floor-draft.ts";
import { rectangleFloor } from "./floor-start.ts";

const floor = { kind: "floor" } as const;
const room = floorDraft(rectangleFloor(8010, 12_000));

test("HALL-25: a corner goes to the nearest whole centimetre, never to minus nothing", () => {
  expect(moveCorner(room, floor, 0, [-4, 126]).outline[0]).toEqual([0, 130]);
});

test("HALL-25: a new corner stands in the middle of its wall, to the centimetre", () => {
  // half of 8010 is 4005, and half a centimetre goes up
  expect(addCorner(room, floor, 0).outline[1]).toEqual([4010, 0]);
  expect(addCorner(room, floor, 3).outline).toEqual([...room.outline, [0, 6000]]);
  expect(addCorner(room, floor, 1, [8012, 3333]).outline[2]).toEqual([8010, 3330]);
});

test("HALL-25: a corner taken away joins its two walls, but three corners stay", () => {
  const triangle = removeCorner(room, floor, 2);
  expect(triangle.outline).toEqual([
    [0, 0],
    [8010, 0],
    [0, 12_000],
  ]);
  expect(removeCorner(triangle, floor, 0)).toBe(triangle);
});

test("HALL-25: a corner that is not there is a fault of the caller", () => {
  expect(() => removeCorner(room, floor, 4)).toThrow("no corner 4 of 4");
  expect(() => moveCorner(room, { kind: "fixture", index: 0 }, 0, [0, 0])).toThrow("no such shape");
});
