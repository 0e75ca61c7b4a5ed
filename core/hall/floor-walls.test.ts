import { area } from "#kernels/geometry";
import { assert, constantFrom, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { floorDraft } from "./floor-draft.ts";
import { lShapedFloor, rectangleFloor } from "./floor-start.ts";
import { cornersOf, moveWall, outwardOf, setWallLength, wallsOf } from "./floor-walls.ts";

const floor = { kind: "floor" } as const;
const room = floorDraft(rectangleFloor(8000, 12_000));
const ell = floorDraft(lShapedFloor({ width: 10_000, depth: 8000, cutWidth: 4000, cutDepth: 3000 }));

test("HALL-22: the walls of a room have its lengths and the names of its corners", () => {
  expect(wallsOf(room.outline).map(({ name, length }) => [name, length])).toEqual([
    ["A–B", 8000],
    ["B–C", 12_000],
    ["C–D", 8000],
    ["D–A", 12_000],
  ]);
});

test("HALL-22: the inner corner of an L is 270°, whichever way round it was drawn", () => {
  expect(cornersOf(ell.outline).map((it) => Math.round(it.innerAngle))).toEqual([90, 90, 90, 270, 90, 90]);
  const clockwise = ell.outline.toReversed();
  expect(cornersOf(clockwise).map((it) => Math.round(it.innerAngle))).toEqual([90, 90, 270, 90, 90, 90]);
});

test("HALL-22: outward is out of the floor, whichever way round it was drawn", () => {
  expect(outwardOf(room.outline, 1)).toEqual([1, 0]);
  // reversed, the first wall runs along the top
  expect(outwardOf(room.outline.toReversed(), 0)[1]).toBe(1);
});

test("HALL-23: pushing out a wall of a room keeps its corners square", () => {
  expect(moveWall(room, floor, 1, 503).outline).toEqual(rectangleFloor(8500, 12_000));
  expect(moveWall(room, floor, 1, -1000).outline).toEqual(rectangleFloor(7000, 12_000));
});

test("HALL-23: the ends of a wall slide along slanting neighbours", () => {
  // the left wall leans 45°: A [0, 0], D [3000, 3000]; the top going up 1 m slides D to [4000, 4000]
  const leaning = floorDraft([
    [0, 0],
    [9000, 0],
    [9000, 3000],
    [3000, 3000],
  ]);
  expect(moveWall(leaning, floor, 2, 1000).outline).toEqual([
    [0, 0],
    [9000, 0],
    [9000, 4000],
    [4000, 4000],
  ]);
});

test("HALL-23: a wall beside one in the same line goes straight out there", () => {
  const withExtraCorner = floorDraft([[0, 0], [4000, 0], ...room.outline.slice(1)]);
  expect(moveWall(withExtraCorner, floor, 0, 500).outline.slice(0, 3)).toEqual([
    [0, -500],
    [4000, -500],
    [8000, 0],
  ]);
});

test("HALL-24: a room given a longer wall stays a room: the wall across grows with it", () => {
  expect(setWallLength(room, floor, 0, 9000).outline).toEqual(rectangleFloor(9000, 12_000));
  expect(setWallLength(room, floor, 1, 10_000).outline).toEqual(rectangleFloor(8000, 10_000));
});

test("HALL-24: in an L the first wall that runs back takes up the difference", () => {
  // A–B from 10 m to 12 m: B and C go right, C–D (back from 10 to 6) becomes 6 m long, the rest stays
  expect(setWallLength(ell, floor, 0, 12_000).outline).toEqual(
    lShapedFloor({ width: 12_000, depth: 8000, cutWidth: 6000, cutDepth: 3000 }),
  );
});

test("HALL-24: a wall that would vanish is passed over for the next that runs back", () => {
  // A–B from 10 m to 5.5 m is 4.5 m less: C–D has only 4 m, so E–F (6 m) gives and the whole right side comes in
  expect(wallsOf(setWallLength(ell, floor, 0, 5500).outline).map((it) => it.length)).toEqual([
    5500, 5000, 4000, 3000, 1500, 8000,
  ]);
});

test("HALL-24: where no wall runs back, only the second corner moves", () => {
  const triangle = floorDraft([
    [0, 0],
    [6000, 0],
    [2000, 5000],
  ]);
  expect(setWallLength(triangle, floor, 0, 7000).outline).toEqual([
    [0, 0],
    [7000, 0],
    [2000, 5000],
  ]);
});

test("HALL-24: any wall of an L takes any longer length to the millimetre, and no corner stops being square", () => {
  assert(
    property(constantFrom(0, 1, 2, 3, 4, 5), integer({ min: 1, max: 30_000 }), (wall, longer) => {
      const length = (wallsOf(ell.outline)[wall]?.length ?? 0) + longer;
      const { outline } = setWallLength(ell, floor, wall, length);
      expect(wallsOf(outline)[wall]?.length).toBe(length);
      expect(cornersOf(outline).map((it) => Math.round(it.innerAngle))).toEqual([90, 90, 90, 270, 90, 90]);
    }),
  );
});

test("HALL-23: pushing a wall out by whole centimetres adds its length times the way", () => {
  assert(
    property(constantFrom(0, 1, 2, 3), integer({ min: 1, max: 500 }), (wall, centimetres) => {
      const length = wallsOf(room.outline)[wall]?.length ?? 0;
      const pushed = moveWall(room, floor, wall, centimetres * 10);
      expect(area(pushed.outline) - area(room.outline)).toBe(length * centimetres * 10);
    }),
  );
});
