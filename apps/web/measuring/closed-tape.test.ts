import { expect, test } from "vitest";
import { hallDocumentSchema } from "#core/hall";
import { closedTape } from "./closed-tape.ts";
import { floorBefore, hallFloor, replacedWords } from "./hall-floor.ts";
import { blankWall, newMeasuring, type Tape } from "./measuring.ts";
import { readTape } from "./read-tape.ts";

const begun = newMeasuring({ way: "tape", hall: null, name: "", units: "metric", begun: "2026-11-25" }).tape;

function close(lengths: readonly string[], more: Partial<Tape> = {}) {
  const tape = { ...begun, walls: lengths.map((length) => ({ ...blankWall, length })), done: true, ...more };
  const found = closedTape(tape, readTape(tape, "metric"), "metric");
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
}

test("every figure that is drawn otherwise than it was taped stands beside the taped one", () => {
  const { outline, drawn } = close(["8.01", "12", "7.99", "12"]);
  expect(drawn.map((it) => [it.name, it.taped, it.drawn])).toEqual([
    ["the wall A–B", 8010, 8000],
    ["the wall B–C", 12_000, 12_000],
    ["the wall C–D", 7990, 8000],
    ["the wall D–A", 12_000, 12_000],
  ]);
  expect(outline).toEqual([
    [0, 0],
    [8000, 0],
    [8000, 12_000],
    [0, 12_000],
  ]);
});

test("a wall that is likely wrong is marked, and can be left out for now", () => {
  // √(8² + 12²) = 14.42 m both ways, and B–C 0.30 m too long
  const diagonals = [
    { from: 0, to: 2, length: "14.42", inches: "" },
    { from: 1, to: 3, length: "14.42", inches: "" },
  ];
  const { drawn } = close(["8", "12.3", "8", "12"], { diagonals });
  expect(drawn.filter((it) => it.isSuspect).map((it) => it.name)).toEqual(["the wall B–C"]);
  const left = close(["8", "12.3", "8", "12"], { diagonals, without: true });
  const [, bc] = left.drawn;
  expect(Math.abs((bc?.drawn ?? 0) - 12_000)).toBeLessThan(20);
});

test("a floor that is too small to be one is no outline", () => {
  const tape = { ...begun, walls: ["0.8", "0.8", "0.8", "0.8"].map((length) => ({ ...blankWall, length })) };
  const found = closedTape(tape, readTape(tape, "metric"), "metric");
  expect(found.ok ? [] : found.problems.map((it) => it.code)).toEqual(["floor-too-small"]);
});

const hall = hallDocumentSchema.parse({
  name: "Tithe Barn Hall",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  fixtures: [
    {
      label: "Stage",
      outline: [
        [0, 11],
        [8, 11],
        [8, 12],
        [0, 12],
      ],
    },
  ],
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.3, end: 0.3, wall: 0.5 },
});

test("before an outline is used it is said what becomes of what stands on the floor", () => {
  const { outline } = close(["8", "10", "8", "10"]);
  const floor = hallFloor(hall, outline);
  expect(replacedWords(hall, floor)).toEqual([
    "Its floor is replaced; what stands on it stays where it was drawn.",
    "Stage: taken away, because it would lie outside the new walls.",
    "Look at the drawing afterwards: was it walked from the same corner?",
  ]);
  expect(floor.document.fixtures).toEqual([]);
  // put back, the document is the one it was
  expect({ ...floor.document, ...floorBefore(hall) }).toEqual(hall);
});

test("the same outline again is known as the hall’s own", () => {
  expect(hallFloor(hall, close(["8", "12", "8", "12"]).outline).isSame).toBe(true);
});
