import { expect, test } from "vitest";
import { doorSwing } from "./door-swing.ts";
import { moveCorner } from "./floor-corners.ts";
import { floorDraft } from "./floor-draft.ts";
import {
  addFixture,
  addKeepClear,
  moveShape,
  placeTeacher,
  rectangleAt,
  removeShape,
  renameShape,
  resizeShape,
  setMovable,
} from "./floor-shapes.ts";
import { rectangleFloor } from "./floor-start.ts";

const bare = floorDraft(rectangleFloor(8000, 12_000));
const piano = { label: "Piano", outline: rectangleAt([6400, 100], 1500, 700), movable: true };
const withPiano = addFixture(bare, piano);
const first = { kind: "fixture", index: 0 } as const;
const door = doorSwing(bare.outline, { wall: 0, hingeAt: 1000, width: 900, reaches: "on" });
const withDoor = addKeepClear(bare, door);

test("HALL-26: a shape that is moved lands with its bottom left on a whole centimetre", () => {
  // 6400 − 1003 = 5397 → 5400; 100 + 55 = 155 → 160
  expect(moveShape(withPiano, first, [-1003, 55]).fixtures[0]?.outline).toEqual(
    rectangleAt([5400, 160], 1500, 700),
  );
});

test("HALL-26: a door moves leaf and all, and bent by a corner it is a plain zone", () => {
  const zone = { kind: "keepClear", index: 0 } as const;
  const moved = moveShape(withDoor, zone, [500, 0]).keepClear[0];
  expect(moved?.door?.hinge).toEqual([1500, 0]);
  expect(moved?.door?.open).toEqual([1500, 900]);
  expect(moveCorner(withDoor, zone, 1, [2500, 0]).keepClear[0]?.door).toBeUndefined();
});

test("HALL-26: a shape is stretched from its bottom left", () => {
  expect(resizeShape(withPiano, first, 2000, 1000).fixtures[0]?.outline).toEqual(
    rectangleAt([6400, 100], 2000, 1000),
  );
});

test("HALL-26: a fixture can be renamed, fixed in its place and taken away", () => {
  expect(renameShape(withPiano, first, "Upright piano").fixtures[0]?.label).toBe("Upright piano");
  expect(setMovable(withPiano, 0, false).fixtures[0]?.movable).toBe(false);
  expect(removeShape(withPiano, first)).toEqual(bare);
});

test("HALL-26: there is one teacher zone: placing it again replaces it", () => {
  const placed = placeTeacher(
    placeTeacher(bare, rectangleFloor(1000, 1000)),
    rectangleAt([0, 10_000], 8000, 2000),
  );
  expect(placed.teacher?.outline[0]).toEqual([0, 10_000]);
  expect(removeShape(placed, { kind: "teacher" })).toEqual(bare);
});
