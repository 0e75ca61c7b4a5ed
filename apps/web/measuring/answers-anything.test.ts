import {
  array,
  assert,
  boolean,
  constantFrom,
  double,
  integer,
  oneof,
  property,
  record,
  string,
  tuple,
} from "fast-check";
import { expect, test } from "vitest";
import { floorDraft, floorProblems } from "#core/hall";
import { closedTape } from "./closed-tape.ts";
import { newMeasuring, type Tape, type Trace } from "./measuring.ts";
import { readTape } from "./read-tape.ts";
import { readTrace } from "./read-trace.ts";
import { insertWall, lastWall, putWallBack, takeWallAway } from "./tape-steps.ts";

const begun = newMeasuring({ way: "tape", hall: null, name: "", units: "metric", begun: "2026-11-25" });
const units = constantFrom("metric", "feet");
const figure = oneof(
  integer({ min: 1, max: 30 }).map(String),
  constantFrom("", " ", "0", "-4", "wide", "1e9", "8,5", "NaN", "24' 6\"", "900"),
  string({ maxLength: 6 }),
);
const wall = record({
  length: figure,
  inches: figure,
  turn: constantFrom("left", "left", "left", "right", "left-other", "right-other"),
  degrees: constantFrom("", "45", "90", "0", "179", "400", "x"),
});
const diagonal = record({
  from: integer({ min: -1, max: 9 }),
  to: integer({ min: -1, max: 9 }),
  length: figure,
  inches: figure,
});
/** A room with whatever typed instead of some of its walls. */
const room = tuple(
  integer({ min: 3, max: 15 }),
  integer({ min: 3, max: 15 }),
  array(wall, { maxLength: 2 }),
).map(([width, depth, others]) =>
  [width, depth, width, depth].map((length, index) => {
    const told = { length: String(length), inches: "", turn: "left" as const, degrees: "" };
    return others[index - 1] ?? told;
  }),
);
const tape = record({
  walls: oneof(room, array(wall, { minLength: 1, maxLength: 8 })),
  diagonals: array(diagonal, { maxLength: 4 }),
  square: boolean(),
  without: boolean(),
});
const point = tuple(double({ noNaN: false }), double({ noNaN: false }));
const near = tuple(integer({ min: 0, max: 900 }), integer({ min: 0, max: 900 }));
const end = oneof(constantFrom(null), near, point);
const distance = oneof(
  record({ from: end, to: end, length: figure, inches: figure }),
  record({
    from: near,
    to: near,
    length: integer({ min: 2, max: 60 }).map(String),
    inches: constantFrom(""),
  }),
);

test("whatever was typed on a walk, it is answered with a sound outline or with what is wrong", () => {
  let sound = 0;
  assert(
    property(tape, units, (typed, as) => {
      const walked: Tape = { ...begun.tape, ...typed, done: true, at: null };
      const read = readTape(walked, as);
      const closed = closedTape(walked, read, as);
      if (!closed.ok) {
        expect(closed.problems.length).toBeGreaterThan(0);
        return;
      }
      sound += 1;
      expect(floorProblems(floorDraft(closed.outline))).toEqual([]);
      for (const it of closed.drawn) expect(Number.isFinite(it.drawn)).toBe(true);
      for (const it of closed.closed.sentences) expect(it).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 1500 },
  );
  expect(sound).toBeGreaterThan(100);
});

test("no step of a walk throws, and a wall taken away and put back is the walk before", () => {
  assert(
    property(tape, integer({ min: 0, max: 9 }), (typed, at) => {
      const walked: Tape = { ...begun.tape, ...typed, done: true, at: null };
      const index = at % walked.walls.length;
      expect(insertWall(walked, index).walls).toHaveLength(walked.walls.length + 1);
      expect(lastWall(walked).done).toBe(true);
      const less = takeWallAway(walked, index);
      if (less.gone !== null && walked.walls.length > 1)
        expect(putWallBack(less).walls).toEqual(walked.walls);
    }),
  );
});

test("whatever is marked on a picture, it is answered with a sound outline or with what is wrong", () => {
  const traces = record({
    corners: array(oneof(near, near, near, point), { maxLength: 8 }),
    known: distance,
    check: distance,
    square: boolean(),
  });
  let sound = 0;
  assert(
    property(traces, units, (marked, as) => {
      const trace: Trace = { ...begun.trace, ...marked };
      const { plan } = readTrace(trace, as);
      if (!plan.ok) {
        expect(plan.problems.length).toBeGreaterThan(0);
        return;
      }
      sound += 1;
      expect(floorProblems(floorDraft(plan.value.outline))).toEqual([]);
      for (const it of plan.value.sentences) expect(it).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 2000 },
  );
  expect(sound).toBeGreaterThan(50);
});
