import { type Point, pointToSegment, type Polygon } from "#kernels/geometry";
import { checkPlaced, rectangleOf } from "#kernels/packing";
import { aHall, randomConvexFloors, randomHalls, randomLs, randomRooms } from "#testing";
import { assert, constantFrom, integer, oneof, property, record } from "fast-check";
import { expect, test } from "vitest";
import { wallsOf } from "./floor-walls.ts";
import type { Hall } from "./hall.ts";
import { floorToFill, matPlan } from "./mat-plan.ts";
import type { MatPlan, PlacedMat, StringEnd } from "./mat-plan-types.ts";
import { gapPresetNames, gapPresets } from "./presets.ts";
import { setOutSentences } from "./set-out-sentences.ts";

function box(x: number, y: number, width: number, depth: number): [number, number][] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

const withTeacher = aHall({ teacher: { outline: box(0, 9.5, 8, 2.5) } });

test("HALL-15: a plain room is set out from the front and the left wall", () => {
  // 7 m hold 6 mats: 6 × 0.61 + 5 × 0.50 = 6.16; 0.84 over, 0.42 to each side: 0.50 + 0.42 = 0.92 m from the wall.
  // 9 m hold 4 lines: 4 × 1.83 + 3 × 0.30 = 8.22; 0.78 over, shared among the lines.
  const { setOut } = matPlan(withTeacher);
  expect(setOut.toTheCentimetre).toBe(true);
  expect(setOut.sentences).toEqual([
    "Every mat lies with its length front to back. Lines are measured from the front wall to the nearest edge of their mats.",
    "Line 1: 2.76 m from the front wall. First mat starts 0.92 m from the left wall; then centres every 1.11 m; 6 mats.",
    "Line 2: 5.02 m from the front wall. First mat starts 0.92 m from the left wall; then centres every 1.11 m; 6 mats.",
    "Line 3: 7.28 m from the front wall. First mat starts 0.92 m from the left wall; then centres every 1.11 m; 6 mats.",
    "Line 4: 9.54 m from the front wall. First mat starts 0.92 m from the left wall; then centres every 1.11 m; 6 mats.",
  ]);
});

test("HALL-15: the front is the teacher’s side, so with the teacher on the right the left wall is the top one", () => {
  const turned = aHall({ outline: box(0, 0, 12, 8), teacher: { outline: box(9.5, 0, 2.5, 8) } });
  const { setOut, mats } = matPlan(turned);
  expect(setOut.sentences[1]).toBe(
    "Line 1: 0.75 m from the left wall. First mat starts 2.81 m from the front wall; then centres every 1.11 m; 8 mats.",
  );
  // facing the teacher a mat lies left to right, which is up the drawing: its middle is 0.75 + 1.83 / 2 = 1.665 m
  // below the top at 8 m, and 2.81 + 0.61 / 2 = 3.115 m short of the right at 12 m
  expect(mats[0]).toEqual({ centre: [12_000 - 3115, 8000 - 1665], angle: 90 });
});

test("HALL-16: a line that is broken by a pillar says where it goes on", () => {
  const hall = aHall({
    outline: box(0, 0, 8, 3),
    fixtures: [{ label: "Pillar", outline: box(3.8, 1.3, 0.4, 0.4) }],
  });
  // free of the pillar with 0.50 m all round: 0.50 to 3.30 and 4.70 to 7.50, 2.80 m each.
  // side by side ⌊(2.8 + 0.5) / 1.11⌋ = 2 in each, 4; the line is 1.83 m in 2 m
  const { count, setOut } = matPlan(hall);
  expect(count).toBe(4);
  expect(setOut.sentences[1]).toMatch(
    /^Line 1: 0\.5\d m from the front wall\. First mat starts \d\.\d\d m from the left wall; then centres every 1\.11 m; 2 mats\. Past a space the next mat starts \d\.\d\d m from there; then centres every 1\.11 m; 2 mats\.$/,
  );
});

test("HALL-16: in an L a line is measured from the wall that it comes to", () => {
  const ell = aHall({
    outline: [
      [0, 0],
      [10, 0],
      [10, 5],
      [6, 5],
      [6, 9],
      [0, 9],
    ],
  });
  const { setOut } = matPlan(ell);
  // files of mats that lie left to right; the last is in the wing, whose front is the wall C–D
  expect(setOut.linesFrom).toBe("the left wall");
  expect(setOut.lines.map((line) => [line.matsFrom, line.centres.length])).toEqual([
    ["the front wall", 7],
    ["the front wall", 7],
    ["the front wall", 4],
    ["the wall C–D", 4],
  ]);
});

test("HALL-17: where no wall runs along the lines, a string between two walls gives the first line", () => {
  const { setOut } = matPlan(aHall({ axis: 30 }));
  expect(setOut.string).not.toBeNull();
  expect(setOut.linesFrom).toMatch(/^corner [A-D]$/);
  expect(setOut.sentences[0]).toContain(
    ", square to the lines, to the nearest edge of their mats, and mats along that edge.",
  );
  expect(setOut.sentences[1]).toMatch(
    /^For the near edge of line 1 stretch a string from the \w+ wall, \d+\.\d+ m from corner/,
  );
});

test("HALL-17: where only the back wall runs along the lines, they are measured from it", () => {
  // the front leans, the back is level: A–B along the bottom
  const hall = aHall({
    outline: [
      [0, 0],
      [9, 0],
      [9, 6],
      [0, 8],
    ],
    axis: 0,
  });
  const { setOut } = matPlan(hall);
  expect([setOut.linesFrom, setOut.string]).toEqual(["the wall A–B", null]);
});

test("HALL-17: a wall along the lines that stands behind some of them is not what they are measured from", () => {
  // found at random: B–C runs along the one line, but 2.88 m further in than it
  const outline: [number, number][] = [
    [-2.463, -4.443],
    [-3.399, -3.924],
    [-1.765, -0.977],
    [-5.228, 0.943],
    [-4.399, 2.439],
    [0, 0],
  ];
  const gaps = { side: 0.9, end: 0.9, wall: 0.5 };
  const { setOut } = matPlan(aHall({ outline, gaps, mat: { length: 1.73, width: 0.61 } }));
  expect(setOut.linesFrom).not.toBe("the wall B–C");
  expect(setOut.lines.map((line) => line.from > 0 && line.first > 0)).toEqual([true]);
});

test("HALL-18: in feet and inches the same set-out says how fine it is", () => {
  const sentences = setOutSentences(matPlan(withTeacher).setOut, "feet");
  // 2760 mm is 434.6 quarter inches, 435 = 9 ft 3/4 in; 920 is 144.9, 145 = 3 ft 1/4 in; 1110 is 174.8, 175 = 3 ft 7 3/4 in
  expect(sentences[1]).toBe(
    "Line 1: 9 ft 3/4 in from the front wall. First mat starts 3 ft 1/4 in from the left wall; then centres every 3 ft 7 3/4 in; 6 mats.",
  );
  expect(sentences.at(-1)).toBe(
    "Feet and inches are to the nearest quarter inch; the figures in metres are exact.",
  );
});

/** Lays mats from the figures alone, as a person with a tape in an upright hall would, the front at the top. */
function laidByTape(hall: Hall, plan: MatPlan): readonly PlacedMat[] {
  const { lines, linesFrom, lengthLies } = plan.setOut;
  const frontToBack = lengthLies === "front to back";
  const rows = linesFrom === "the front wall";
  const half = (rows === frontToBack ? hall.mat.length : hall.mat.width) / 2;
  return lines.flatMap((line) =>
    line.centres.map((centre) => {
      const [across, along] = [line.from + half, centre];
      const base = wallPlace(hall, linesFrom);
      const start = wallPlace(hall, line.matsFrom);
      const at = rows ? ([start + along, base - across] as const) : ([base + across, start - along] as const);
      return { centre: at, angle: frontToBack ? 90 : 0 };
    }),
  );
}

/** y of a front wall or one that faces it, x of a left one. */
function wallPlace(hall: Hall, words: string): number {
  if (words === "the front wall") return Math.max(...hall.outline.map(([, y]) => y));
  if (words === "the left wall") return Math.min(...hall.outline.map(([x]) => x));
  const wall = wallsOf(hall.outline).find((it) => words === `the wall ${it.name}`);
  if (wall === undefined) throw new Error(`which wall is ${words}?`);
  return wall.from[0] === wall.to[0] ? wall.from[0] : wall.from[1];
}

test("HALL-15: who lays the mats from the figures alone has the same number of them, all allowed", () => {
  const gaps = constantFrom(...gapPresetNames).map((name) => gapPresets[name]);
  assert(
    property(oneof(randomRooms(), randomLs()), gaps, (outline, chosen) => {
      const hall: Hall = { ...aHall(), outline, gaps: chosen };
      const plan = matPlan(hall);
      expect(plan.setOut.toTheCentimetre).toBe(true);
      const laid = laidByTape(hall, plan);
      expect(laid.length).toBe(plan.count);
      expect(checkPlaced(floorToFill(hall), hall.mat, hall.gaps, laid)).toEqual([]);
    }),
  );
});

test("HALL-15: no figure of any hall is less than nothing", () => {
  assert(
    property(randomHalls(), (hall) => {
      const { lines } = matPlan(hall).setOut;
      expect(lines.filter((line) => line.from < 0 || line.first < 0)).toEqual([]);
    }),
  );
});

test("HALL-17: the string for the first line touches the near edge of every mat in it", () => {
  const turned = record({ outline: randomConvexFloors(), axis: integer({ min: 1, max: 89 }) });
  let strings = 0;
  assert(
    property(turned, ({ outline, axis }) => {
      const hall: Hall = { ...aHall(), outline, axis };
      const { setOut, mats } = matPlan(hall);
      const [line] = setOut.lines;
      if (setOut.string === null || line === undefined) return;
      strings += 1;
      const [from, to] = [setOut.string.from, setOut.string.to].map((end) => pointOnWall(outline, end));
      if (from === undefined || to === undefined) throw new Error("a string has two ends");
      for (const mat of mats.slice(0, line.centres.length)) {
        const off = rectangleOf(mat, hall.mat).map((corner) => pointToSegment(corner, from, to));
        const [, second] = off.sort((a, b) => a - b);
        // the ends are to the millimetre, so the string is at most half of one off
        expect(second).toBeLessThan(1);
      }
    }),
  );
  expect(strings).toBeGreaterThan(20);
});

function pointOnWall(outline: Polygon, { corner, distance }: StringEnd): Point {
  const wall = wallsOf(outline).find((it) => it.name.startsWith(`${corner}–`));
  if (wall === undefined) throw new Error(`no wall leaves ${corner}`);
  const share = distance / wall.length;
  return [
    wall.from[0] + share * (wall.to[0] - wall.from[0]),
    wall.from[1] + share * (wall.to[1] - wall.from[1]),
  ];
}
