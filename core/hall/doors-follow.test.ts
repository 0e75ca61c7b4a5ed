import { assert, constantFrom, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { doorInWall } from "./door-in-wall.ts";
import { type Door, doorSwing } from "./door-swing.ts";
import { doorsFollow, hangDoor } from "./doors-follow.ts";
import { floorDraft } from "./floor-draft.ts";
import { addKeepClear } from "./floor-shapes.ts";
import { rectangleFloor } from "./floor-start.ts";
import { moveCorner } from "./floor-corners.ts";
import { moveWall, setWallLength } from "./floor-walls.ts";

const room = rectangleFloor(8000, 12_000);
const leaning = [
  [0, 0],
  [9000, 2500],
  [7000, 11_000],
  [-1500, 8000],
] as const;
const floor = { kind: "floor" } as const;

function withDoor(door: Door) {
  return addKeepClear(floorDraft(room), doorSwing(room, door));
}

test("HALL-28: a door is known again from its leaf, in whichever wall it was hung", () => {
  const doors = property(
    constantFrom(room, leaning, leaning.toReversed()),
    integer({ min: 0, max: 3 }),
    integer({ min: 1300, max: 5000 }),
    constantFrom("on" as const, "back" as const),
    (outline, wall, hingeAt, reaches) => {
      const door = doorInWall(outline, doorSwing(outline, { wall, hingeAt, width: 900, reaches }));
      expect(door).toMatchObject({ wall, reaches });
      expect(Math.abs((door?.hingeAt ?? 0) - hingeAt)).toBeLessThanOrEqual(1);
      expect(Math.abs((door?.width ?? 0) - 900)).toBeLessThanOrEqual(1);
    },
  );
  assert(doors);
});

test("HALL-28: a plain zone is no door", () => {
  expect(doorInWall(room, { label: "Way out", outline: rectangleFloor(1000, 1000) })).toBeNull();
});

test("HALL-28: a door goes out with its wall", () => {
  const before = withDoor({ wall: 2, hingeAt: 1000, width: 900, reaches: "on" });
  const after = doorsFollow(before, moveWall(before, floor, 2, 500));
  // wall 2 runs from [8000, 12000] to [0, 12000]; 500 out is 12500, the hinge 1000 on from its corner
  expect(after.keepClear[0]?.door?.hinge).toEqual([7000, 12_500]);
});

test("HALL-28: a door leans with its wall", () => {
  const before = withDoor({ wall: 0, hingeAt: 0, width: 900, reaches: "on" });
  const after = doorsFollow(before, moveCorner(before, floor, 1, [6000, -8000]));
  // the wall now runs 6 : −8 over 10, so that the shut leaf ends at 900 × 0.6 and 900 × −0.8
  expect(after.keepClear[0]?.door?.closed).toEqual([540, -720]);
});

test("HALL-28: a door near the end of a wall that grew shorter is shifted along, and back is not past its corner", () => {
  const before = withDoor({ wall: 0, hingeAt: 7000, width: 900, reaches: "on" });
  const after = doorsFollow(before, setWallLength(before, floor, 0, 6000));
  // 6000 − 900 = 5100
  expect(after.keepClear[0]?.door?.hinge).toEqual([5100, 0]);
});

test("HALL-28: a wall too short for its door leaves the door where it was", () => {
  const before = withDoor({ wall: 0, hingeAt: 1000, width: 900, reaches: "on" });
  const shorter = setWallLength(before, floor, 0, 800);
  expect(doorsFollow(before, shorter)).toBe(shorter);
  expect(hangDoor(shorter, { wall: 0, hingeAt: 0, width: 900, reaches: "on" })).toBeNull();
});

test("HALL-28: doors in walls that did not move stay the very same zones", () => {
  const before = withDoor({ wall: 3, hingeAt: 5000, width: 900, reaches: "on" });
  const after = moveCorner(before, floor, 2, [9000, 12_000]);
  // wall 3 runs from corner 3 to corner 0
  expect(doorsFollow(before, after)).toBe(after);
});
