import { expect, test } from "vitest";
import { floorDraft } from "./floor-draft.ts";
import { addFixture, rectangleAt } from "./floor-shapes.ts";
import { lShapedFloor, rectangleFloor } from "./floor-start.ts";
import { freeSpot } from "./free-spot.ts";

test("HALL-30: a new thing stands in the middle of an empty floor", () => {
  // (8000 − 1000) ÷ 2 across, (12000 − 2000) ÷ 2 up
  expect(freeSpot(floorDraft(rectangleFloor(8000, 12_000)), 1000, 2000)).toEqual([3500, 5000]);
});

test("HALL-30: it stands beside what is there already, and may touch it", () => {
  const first = { label: "Table", outline: rectangleAt([3500, 5500], 1000, 1000), movable: true };
  const spot = freeSpot(addFixture(floorDraft(rectangleFloor(8000, 12_000)), first), 1000, 1000);
  // two paces of 500 away, in whichever direction comes first
  expect(Math.hypot(spot[0] - 3500, spot[1] - 5500)).toBe(1000);
});

test("HALL-30: in an L it stands on the floor and not in the missing corner", () => {
  const floor = lShapedFloor({ width: 10_000, depth: 10_000, cutWidth: 6000, cutDepth: 6000 });
  const [x, y] = freeSpot(floorDraft(floor), 1000, 1000);
  // the missing corner is from 4000 to 10000 both ways
  expect(x + 1000 <= 4000 || y + 1000 <= 4000).toBe(true);
});

test("HALL-30: a floor that is full gives its middle", () => {
  const full = { label: "Stacked chairs", outline: rectangleAt([0, 0], 4000, 4000), movable: true };
  expect(freeSpot(addFixture(floorDraft(rectangleFloor(4000, 4000)), full), 1000, 1000)).toEqual([
    1500, 1500,
  ]);
});
