import { expect, test } from "vitest";
import { blankWall, newMeasuring, type Tape, type TypedWall } from "./measuring.ts";
import { readTape } from "./read-tape.ts";
import {
  changeDiagonal,
  changeWall,
  diagonalOf,
  insertWall,
  lastWall,
  nextWall,
  oneMoreWall,
  putWallBack,
  takeDiagonalAway,
  takeWallAway,
} from "./tape-steps.ts";

const begun = newMeasuring({ way: "tape", hall: null, name: "", units: "metric", begun: "2026-11-25" }).tape;
const wall = (length: string, more: Partial<TypedWall> = {}): TypedWall => ({
  ...blankWall,
  length,
  ...more,
});
const tapeOf = (...walls: TypedWall[]): Tape => ({ ...begun, walls, at: walls.length - 1 });

const feet = (length: string, inches = "") =>
  readTape(tapeOf(wall(length, { inches })), "feet").walls[0]?.length;

test("walls are entered one after the other, and a blank one at the end was no wall", () => {
  let tape = begun;
  for (const length of ["8", "12", "8", "12"]) tape = nextWall(changeWall(tape, tape.at ?? 0, { length }));
  const closed = lastWall(tape);
  expect(closed.walls.map((it) => it.length)).toEqual(["8", "12", "8", "12"]);
  expect([closed.done, closed.at]).toEqual([true, null]);
  expect(oneMoreWall(closed)).toMatchObject({ done: false, at: 4 });
});

test("after each wall it is told how far back to the beginning it is", () => {
  // √(8² + 12²) = 14.422 m
  expect(readTape(tapeOf(wall("8"), wall("12"), wall("")), "metric")).toMatchObject({
    gap: 14_422,
    whole: false,
    path: [
      [0, 0],
      [8000, 0],
      [8000, 12_000],
    ],
  });
  expect(readTape(tapeOf(wall("8"), wall("12"), wall("8"), wall("11.98")), "metric").gap).toBe(20);
});

test("an angle that is not known leaves the way back untold, but not that of the wall just walked", () => {
  const slant = wall("3", { turn: "left-other" });
  expect(readTape(tapeOf(slant, wall("4")), "metric").gap).toBeNull();
  const read = readTape(tapeOf(wall("4"), slant), "metric");
  expect(read.gap).toBe(5000);
  expect(read.walls[1]).toEqual({ length: 3000, turn: 90, turnKnown: false });
});

test("feet and inches are typed in two boxes, or in one as people write them", () => {
  // 24 ft 6½ in = 24.5417 × 304.8 = 7480 mm
  expect([feet("24", "6.5"), feet("24", "6 1/2"), feet("24' 6½\"")]).toEqual([7480, 7480, 7480]);
  expect(feet("", "30")).toBe(762);
});

test("what cannot be read is told at its wall, and what is blank is not", () => {
  const read = readTape(
    tapeOf(wall("wide"), wall("0"), wall("-3"), wall("4", { turn: "right-other", degrees: "210" }), wall("")),
    "metric",
  );
  expect(read.problems.map((it) => it?.code)).toEqual([
    "length-unreadable",
    "wall-too-short",
    "length-negative",
    "turn-unreadable",
    undefined,
  ]);
});

test("a forgotten wall and one too many shift the corners that diagonals run to", () => {
  const square = { ...tapeOf(wall("8"), wall("12"), wall("8"), wall("12")), done: true };
  const crossed = changeDiagonal(square, { from: 0, to: 2, length: "14.42", inches: "" });
  expect(diagonalOf(insertWall(crossed, 1), { from: 0, to: 3 }).length).toBe("14.42");
  expect(takeWallAway(insertWall(crossed, 1), 1)).toEqual({ ...crossed, at: null });
  expect(takeDiagonalAway(crossed, { from: 2, to: 0 }).diagonals).toEqual([]);
});

test("a wall that was taken away is put back with its figures", () => {
  const square = { ...tapeOf(wall("8"), wall("12"), wall("8"), wall("12")), done: true, at: null };
  const less = takeWallAway(square, 1);
  expect(less.walls.map((it) => it.length)).toEqual(["8", "8", "12"]);
  expect(putWallBack(less)).toEqual(square);
});
