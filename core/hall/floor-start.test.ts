import { expect, test } from "vitest";
import { CLOSES_WITHIN, floorFromWalls, lShapedFloor, rectangleFloor } from "./floor-start.ts";

function wall(length: number) {
  return { length, turn: 90 };
}

test("HALL-21: a rectangle is four corners from the bottom left", () => {
  expect(rectangleFloor(8000, 12_000)).toEqual([
    [0, 0],
    [8000, 0],
    [8000, 12_000],
    [0, 12_000],
  ]);
});

test("HALL-21: an L is the rectangle without its top right corner", () => {
  // 10 m × 8 m less 4 m × 3 m: the inner corner is at 10 − 4 = 6 and 8 − 3 = 5
  expect(lShapedFloor({ width: 10_000, depth: 8000, cutWidth: 4000, cutDepth: 3000 })).toEqual([
    [0, 0],
    [10_000, 0],
    [10_000, 5000],
    [6000, 5000],
    [6000, 8000],
    [0, 8000],
  ]);
});

test("HALL-21: walls walked round with left turns close on the first corner", () => {
  expect(floorFromWalls([wall(6000), wall(9000), wall(6000), wall(9000)])).toEqual({
    outline: rectangleFloor(6000, 9000),
    closingError: 0,
    closes: true,
  });
});

test("HALL-21: a wall that was measured 30 cm short leaves the floor open by that much", () => {
  const walked = floorFromWalls([wall(6000), wall(9000), wall(5700), wall(9000)]);
  expect(walked.closingError).toBe(300);
  expect(walked.closes).toBe(false);
});

test("HALL-21: an error that tapes make is still a floor that closes", () => {
  // 3 cm across and 4 cm along: √(30² + 40²) = 50
  const walked = floorFromWalls([wall(6000), wall(9000), wall(5970), wall(8960)]);
  expect(walked).toMatchObject({ closingError: CLOSES_WITHIN, closes: true });
});

test("HALL-21: turns need not be right angles", () => {
  const third = { length: 4000, turn: 120 };
  // equilateral: the third corner is at half the side and 4000 × sin 60° = 3464.1
  expect(floorFromWalls([third, third, third])).toMatchObject({
    outline: [
      [0, 0],
      [4000, 0],
      [2000, 3464],
    ],
    closingError: 0,
  });
});
