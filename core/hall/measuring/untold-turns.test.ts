import { assert, boolean, constantFrom, integer, property, record, uniqueArray } from "fast-check";
import { expect, test } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { closeMeasuredWalls } from "./close-measured-walls.ts";
import type { MeasuredDiagonal, MeasuredWall } from "./measured-walls.ts";

/** Halls that are hired: a room with a corner cut off, an L, a room with a bay, a room with an alcove. Millimetres. */
const halls: readonly Polygon[] = [
  [
    [0, 0],
    [9000, 0],
    [9000, 4000],
    [7000, 6000],
    [0, 6000],
  ],
  [
    [0, 0],
    [10_000, 0],
    [10_000, 6000],
    [6000, 6000],
    [6000, 11_000],
    [0, 11_000],
  ],
  [
    [0, 0],
    [8000, 0],
    [8000, 3000],
    [9000, 4000],
    [9000, 6000],
    [8000, 7000],
    [8000, 10_000],
    [0, 10_000],
  ],
  [
    [0, 0],
    [7000, 0],
    [7000, 4000],
    [8500, 4000],
    [8500, 7000],
    [7000, 7000],
    [7000, 12_000],
    [0, 12_000],
  ],
];

function far(corners: Polygon, from: number, to: number): number {
  const [a = [0, 0], b = [0, 0]] = [corners[from % corners.length], corners[to % corners.length]];
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** To the left at the end of that wall, in degrees. */
function turnAfter(corners: Polygon, wall: number): number {
  const count = corners.length;
  const [a = [0, 0], b = [0, 0], c = [0, 0]] = [0, 1, 2].map((on) => corners[(wall + on) % count]);
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return (Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI;
}

const walks = record({
  hall: constantFrom(...halls),
  rightward: boolean(),
  first: integer({ min: 0, max: 7 }),
  untold: uniqueArray(integer({ min: 0, max: 7 }), { minLength: 1, maxLength: 4 }),
  sway: integer({ min: -8, max: 8 }),
});

test("HALL-52: a hall with up to four corners untold, taped to the centimetre either way round, comes out as it is", () => {
  let closed = 0;
  assert(
    property(walks, ({ hall, rightward, first, untold, sway }) => {
      const shifted = [...hall.slice(first % hall.length), ...hall.slice(0, first % hall.length)];
      const corners = rightward ? shifted.toReversed() : shifted;
      const read = (from: number, to: number) =>
        Math.round(far(corners, from, to)) + (from % 2 ? sway : -sway);
      const walls = corners.map((_, index): MeasuredWall => {
        const turn = Math.round(turnAfter(corners, index));
        const length = read(index, index + 1);
        return untold.includes(index)
          ? { length, turn: turn > 0 ? 90 : -90, turnKnown: false }
          : { length, turn };
      });
      let diagonals: readonly MeasuredDiagonal[] = [];
      for (let step = 0; step < 6; step++) {
        const found = closeMeasuredWalls(walls, diagonals);
        if (!found.ok) throw new Error(JSON.stringify(found.problems));
        const { next, closes, outline } = found.value;
        if (closes) {
          closed += 1;
          // told corners are held to 0.25° or 1.5°: over 15 m some centimetres
          for (const a of corners.keys())
            for (const b of corners.keys())
              expect(Math.abs(far(outline, a, b) - far(corners, a, b))).toBeLessThan(150);
        }
        if (next === null) break;
        diagonals = [...diagonals, { from: next.from, to: next.to, length: read(next.from, next.to) }];
      }
    }),
    { numRuns: 100 },
  );
  expect(closed).toBeGreaterThan(80);
});
