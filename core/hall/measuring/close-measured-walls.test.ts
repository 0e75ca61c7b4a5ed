import { assert, constantFrom, integer, property, record, tuple } from "fast-check";
import { expect, test } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { closeMeasuredWalls } from "./close-measured-walls.ts";
import { inverseOf } from "./inverse-of.ts";
import type { MeasuredDiagonal, MeasuredWall } from "./measured-walls.ts";

function closed(walls: readonly MeasuredWall[], diagonals: readonly MeasuredDiagonal[] = []) {
  const found = closeMeasuredWalls(walls, diagonals);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function room(...lengths: number[]): MeasuredWall[] {
  return lengths.map((length) => ({ length }));
}

/** 8 × 12 m; √(8² + 12²) = 14.422 m */
const both: MeasuredDiagonal[] = [
  { from: 0, to: 2, length: 14_422 },
  { from: 1, to: 3, length: 14_422 },
];

test("HALL-50: walls that were measured right close, and say what a slip would have to be to be noticed", () => {
  const found = closed(room(8000, 12_000, 8000, 12_000), both);
  expect(found).toMatchObject({ closingError: 0, closes: true, suspects: [], outlineWithout: null });
  expect(found.outline).toEqual([
    [0, 0],
    [8000, 0],
    [8000, 12_000],
    [0, 12_000],
  ]);
  expect(found.sentences).toEqual([
    "Walked round, the last wall ends 0.00 m from where the first began. That is as near as a tape comes: nothing is likely wrong.",
  ]);
  const lengths = found.measures.filter((it) => it.kind !== "turn");
  expect(lengths.map((it) => it.name)).toEqual([
    "the wall A–B",
    "the wall B–C",
    "the wall C–D",
    "the wall D–A",
    "the diagonal A–C",
    "the diagonal B–D",
  ]);
  for (const { noticedFrom } of lengths) expect(noticedFrom).toBeLessThan(150);
});

test("HALL-50: readings a centimetre out close too, and the outline lies between them", () => {
  // opposite walls 8.01 and 7.99 m: 2 cm open, and each comes out as 8 m to the centimetre
  const found = closed(room(8010, 12_000, 7990, 12_000), both);
  expect(found).toMatchObject({ closingError: 20, closes: true });
  const [across] = found.measures;
  expect(Math.abs((across?.adjusted ?? 0) - 8000)).toBeLessThan(10);
});

test("HALL-51: with two diagonals the one wall that is 0.30 m wrong is named, with what it should be", () => {
  const found = closed(room(8000, 12_300, 8000, 12_000), both);
  expect(found.closingError).toBe(300);
  expect(found.suspects).toHaveLength(1);
  const [suspect] = found.suspects;
  expect(suspect).toMatchObject({ kind: "wall", index: 1, name: "the wall B–C", measured: 12_300 });
  expect(Math.abs((suspect?.others ?? 0) - 12_000)).toBeLessThan(10);
  expect(found.sentences[1]).toBe(
    "Likely wrong is the wall B–C: 12.30 m was measured, the others say about 12.00 m, 0.30 m less. Measure it again.",
  );
  // without it the hall is the one that it is, to the centimetre
  for (const [index, [x, y]] of (found.outlineWithout ?? []).entries()) {
    const [trueX, trueY] = [
      [0, 0],
      [8000, 0],
      [8000, 12_000],
      [0, 12_000],
    ][index] ?? [0, 0];
    expect(Math.hypot(x - (trueX ?? 0), y - (trueY ?? 0))).toBeLessThan(20);
  }
});

test("HALL-51: without a diagonal either of two opposite walls may be wrong, and both are named", () => {
  const found = closed(room(8300, 12_000, 8000, 12_000));
  const named = new Map(found.suspects.map((it) => [it.name, it.offBy]));
  expect(named).toEqual(
    new Map([
      ["the wall A–B", 300],
      ["the wall C–D", -300],
    ]),
  );
  expect(found.sentences[1]).toMatch(/^One of these is likely wrong, and the measures cannot tell which: /);
  // two walls 12 m long lean by asin(0.15 / 12) = 0.7° each
  expect(found.sentences[2]).toBe("Or no length is wrong and corners are not square, by up to 0.7°.");
  expect(found.sentences[3]).toMatch(/^A diagonal from corner to corner would check it/);
});

test("HALL-51: a corner that is not square shows against the diagonals, though the walls alone would close", () => {
  // a parallelogram: 8 and 12 m long, its corners 84° and 96°; its diagonals are
  // √(64 + 144 ± 192 cos 84°) = √(208 ± 20.069) = 15.102 and 13.708 m
  const leaning = closed(room(8000, 12_000, 8000, 12_000), [
    { from: 0, to: 2, length: 15_102 },
    { from: 1, to: 3, length: 13_708 },
  ]);
  expect(leaning).toMatchObject({ closingError: 0, closes: false, suspects: [], notSquareBy: 6 });
  expect(leaning.sentences[1]).toBe(
    "The lengths agree with one another if corners are not square, by up to 6°.",
  );
  // C lies 12 m from B at 84° to the wall A–B: 8000 + 12 000 cos 84° = 9254, 12 000 sin 84° = 11 934
  const [x, y] = leaning.outline[2] ?? [0, 0];
  expect(Math.hypot(x - 9254, y - 11_934)).toBeLessThan(20);
});

test("HALL-51: two slips are not put down to one", () => {
  const found = closed(room(8600, 12_000, 8000, 12_700), both);
  expect(found).toMatchObject({ closes: false, settled: false, notSquareBy: null });
  expect(found.sentences[1]).toMatch(
    /^No one measure explains it: more than one is wrong\. The furthest off is the /,
  );
});

/** Floors as they are, with the turn at the end of each wall. */
const floors: readonly {
  corners: Polygon;
  turns: readonly number[];
  diagonals: readonly [number, number][];
}[] = [
  {
    corners: [
      [0, 0],
      [9500, 0],
      [9500, 6500],
      [0, 6500],
    ],
    turns: [90, 90, 90, 90],
    diagonals: [
      [0, 2],
      [1, 3],
    ],
  },
  {
    corners: [
      [0, 0],
      [10_000, 0],
      [10_000, 6000],
      [6000, 6000],
      [6000, 11_000],
      [0, 11_000],
    ],
    turns: [90, 90, -90, 90, 90, 90],
    diagonals: [
      [0, 2],
      [0, 3],
      [1, 3],
      [3, 5],
      [0, 4],
    ],
  },
];

test("HALL-51: whichever wall or diagonal of a room or an L is 0.15 to 0.50 m wrong, it is the first that is named", () => {
  const slip = tuple(integer({ min: 150, max: 500 }), constantFrom(-1, 1)).map(([size, sign]) => size * sign);
  const noise = integer({ min: -5, max: 5 });
  const cases = record({ floor: constantFrom(...floors), which: integer({ min: 0, max: 99 }), slip, noise });
  assert(
    property(cases, ({ floor: { corners, turns, diagonals }, which, slip: by, noise: sway }) => {
      const at = which % (corners.length + diagonals.length);
      const far = (from: number, to: number): number => {
        const [a = [0, 0], b = [0, 0]] = [corners[from], corners[to]];
        return Math.round(Math.hypot(a[0] - b[0], a[1] - b[1]));
      };
      // every reading some millimetres out, one of them far out
      const read = (length: number, index: number): number =>
        length + (index % 2 === 0 ? sway : -sway) + (index === at ? by : 0);
      const walls = corners.map((_, index): MeasuredWall => {
        const turn = turns[index] ?? 90;
        return { length: read(far(index, (index + 1) % corners.length), index), turn };
      });
      const across = diagonals.map(([from, to], index) => ({
        from,
        to,
        length: read(far(from, to), corners.length + index),
      }));
      const [first] = closed(walls, across).suspects;
      expect(first?.kind).toBe(at < corners.length ? "wall" : "diagonal");
      expect(first?.index).toBe(at < corners.length ? at : at - corners.length);
      expect(Math.abs((first?.offBy ?? 0) - by)).toBeLessThan(40);
    }),
    { numRuns: 60 },
  );
});

test("HALL-50: walked to the right, a hall closes as well", () => {
  const right = room(8000, 12_000, 8000, 12_000).map((wall) => ({ ...wall, turn: -90 }));
  expect(closed(right, both)).toMatchObject({ closes: true, closingError: 0 });
});

function codes(walls: readonly MeasuredWall[], diagonals: readonly MeasuredDiagonal[] = []) {
  const found = closeMeasuredWalls(walls, diagonals);
  return found.ok ? [] : found.problems.map((it) => [it.code, it.place]);
}

test("HALL-51: figures that are no measures are told with their place", () => {
  expect(codes(room(8000, 12_000))).toEqual([["walls-count", "walls"]]);
  expect(codes([...room(8000, 0, Number.NaN), { length: 12_000, turn: 200 }])).toEqual([
    ["measure-length", "walls[1].length"],
    ["measure-length", "walls[2].length"],
    ["turn-out-of-range", "walls[3].turn"],
  ]);
  const square = room(8000, 12_000, 8000, 12_000);
  expect(
    codes(square, [
      { from: 0, to: 1, length: 8000 },
      { from: 0, to: 4, length: 8000 },
      { from: 0, to: 2, length: -1 },
    ]),
  ).toEqual([
    ["diagonal-corners", "diagonals[0]"],
    ["diagonal-corners", "diagonals[1]"],
    ["measure-length", "diagonals[2].length"],
  ]);
  // an L of six walls turns right once; with six left turns it would be 540°
  expect(codes(room(10_000, 6000, 4000, 5000, 6000, 11_000))).toEqual([["turns-do-not-close", "walls"]]);
  const many = Array.from({ length: 201 }, () => ({ from: 0, to: 2, length: 14_422 }));
  expect(codes(square, many)).toEqual([["too-many-diagonals", "diagonals"]]);
});

test("HALL-51: walls that no hall has are told", () => {
  // a wall of 20 m beside three of 1 m: nothing closes, and the corners cross
  const found = closeMeasuredWalls([
    { length: 20_000, turn: 150 },
    { length: 1000, turn: -130 },
    { length: 20_000, turn: 170 },
    { length: 1000, turn: 170 },
  ]);
  expect(found.ok ? [] : found.problems.map((it) => it.code)).toEqual(["walls-do-not-meet"]);
});

test("HALL-50: a matrix times its inverse is one, and one that leaves something open has none", () => {
  // [[4, 2], [2, 3]] has the determinant 8 and the inverse [[3, −2], [−2, 4]] / 8
  const inverse = inverseOf([
    [4, 2],
    [2, 3],
  ]);
  expect(inverse?.flat().map((it) => it * 8)).toEqual([3, -2, -2, 4].map((it) => expect.closeTo(it, 12)));
  expect(
    inverseOf([
      [1, 2],
      [2, 4],
    ]),
  ).toBeUndefined();
});
