import { assert, integer, property, record } from "fast-check";
import { expect, test } from "vitest";
import type { Point, Polygon } from "#kernels/geometry";
import { closeMeasuredWalls } from "./close-measured-walls.ts";
import type { MeasuredDiagonal, MeasuredWall } from "./measured-walls.ts";

function closed(walls: readonly MeasuredWall[], diagonals: readonly MeasuredDiagonal[] = []) {
  const found = closeMeasuredWalls(walls, diagonals);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const far = (corners: Polygon, from: number, to: number): number => {
  const [a = [0, 0], b = [0, 0]] = [corners[from], corners[to % corners.length]];
  return Math.round(Math.hypot(a[0] - b[0], a[1] - b[1]));
};

/** The walls of a floor with only the side told to which each corner turns. */
function untold(corners: Polygon): MeasuredWall[] {
  return corners.map((at, index) => {
    const [next, after] = [
      corners[(index + 1) % corners.length] ?? at,
      corners[(index + 2) % corners.length] ?? at,
    ];
    const cross = (next[0] - at[0]) * (after[1] - next[1]) - (next[1] - at[1]) * (after[0] - next[0]);
    return { length: far(corners, index, index + 1), turn: cross > 0 ? 90 : -90, turnKnown: false };
  });
}

const room: MeasuredWall[] = [8000, 12_000, 8000, 12_000].map((length) => ({ length }));

test("HALL-52: a room without a diagonal is asked for one, and with one or two for no more", () => {
  // √(8² + 12²) = 14.422 m
  expect(closed(room).next).toMatchObject({ from: 0, to: 2, expected: 14_422, why: "check" });
  expect(closed(room).next?.says).toBe(
    "Measure the diagonal A–C next, about 14.42 m if all is right: it checks the corners and the lengths.",
  );
  expect(closed(room, [{ from: 0, to: 2, length: 14_422 }]).next).toBeNull();
});

test("HALL-52: where two walls are as likely wrong, a diagonal that differs between the two halls is asked for", () => {
  // one of two opposite walls 0.40 m out: without it A–C is √(8² + 12²) = 14.42 or √(8.4² + 12²) = 14.65 m
  const found = closed([{ length: 8400 }, { length: 12_000 }, { length: 8000 }, { length: 12_000 }]);
  expect(found.suspects.length).toBeGreaterThan(1);
  expect(found.next).toMatchObject({ why: "tell" });
});

test("HALL-52: where no diagonal tells two slips apart, one is asked for all the same until one was taped", () => {
  // 6 cm between two walls of 12 m: the two halls' diagonals differ by 0.06 × 12 / 14.42 = 5 cm
  const open = [{ length: 8000 }, { length: 12_060 }, { length: 8000 }, { length: 12_000 }];
  const found = closed(open);
  expect(found.suspects.length).toBeGreaterThan(1);
  expect(found.next).toMatchObject({ from: 0, to: 2, why: "check" });
});

test("HALL-52: a diagonal that would leave the floor is never asked for", () => {
  // an L: its corners E (6, 11) and C (10, 6) see each other past the inner corner D (6, 6) not at all
  const corners: Polygon = [
    [0, 0],
    [10_000, 0],
    [10_000, 6000],
    [6000, 6000],
    [6000, 11_000],
    [0, 11_000],
  ];
  let diagonals: MeasuredDiagonal[] = [];
  for (let step = 0; step < 6; step++) {
    const { next } = closed(untold(corners), diagonals);
    if (next === null) break;
    expect([next.from, next.to]).not.toEqual([2, 4]);
    diagonals = [...diagonals, { from: next.from, to: next.to, length: far(corners, next.from, next.to) }];
  }
  expect(closed(untold(corners), diagonals)).toMatchObject({ open: [], closes: true });
});

test("HALL-52: four walls of which no angle is known stay open until a diagonal is measured", () => {
  // a trapezium: 10 m, 6 m and 7 m with a square corner at A: B–C is √(3² + 6²) = 6.708 m
  const corners: Polygon = [
    [0, 0],
    [10_000, 0],
    [7000, 6000],
    [0, 6000],
  ];
  const before = closed(untold(corners));
  expect(before).toMatchObject({ closes: false, open: [0, 1, 2, 3], next: { why: "pin" } });
  expect(before.sentences).toEqual([
    "The lengths leave the corners A, B, C and D open: their angles could still be otherwise. A diagonal would pin the shape.",
  ]);
  const pinned = closed(untold(corners), [{ from: 0, to: 2, length: far(corners, 0, 2) }]);
  expect(pinned).toMatchObject({ closes: false, open: [], unchecked: true, next: { from: 1, to: 3 } });
  expect(pinned.sentences).toEqual([
    "The lengths make a shape, but nothing checks them: a slip in one would not show. One more diagonal would check them.",
  ]);
  const after = closed(untold(corners), [
    { from: 0, to: 2, length: far(corners, 0, 2) },
    { from: 1, to: 3, length: far(corners, 1, 3) },
  ]);
  expect(after).toMatchObject({ closes: true, open: [] });
  for (const [index, [x, y]] of after.outline.entries()) {
    const [trueX, trueY] = corners[index] ?? [0, 0];
    expect(Math.hypot(x - trueX, y - trueY)).toBeLessThan(5);
  }
  expect(after.measures.filter((it) => it.kind === "turn").map((it) => it.measured)).toEqual([
    null,
    null,
    null,
    null,
  ]);
});

test("HALL-52: one slanting corner is found from the walls alone", () => {
  // a rectangle of 9 × 6 m with its corner C cut off from (9, 4) to (7, 6): the slant is √8 = 2.828 m, at 45°
  const walls: MeasuredWall[] = [
    { length: 9000 },
    { length: 4000, turnKnown: false },
    { length: 2828, turnKnown: false },
    { length: 7000 },
    { length: 6000 },
  ];
  const found = closed(walls);
  expect(found).toMatchObject({ closes: true, open: [] });
  const [c, d] = found.measures.filter((it) => it.kind === "turn" && it.measured === null);
  expect(Math.abs((c?.adjusted ?? 0) - 45)).toBeLessThan(0.2);
  expect(Math.abs((d?.adjusted ?? 0) - 45)).toBeLessThan(0.2);
});

test("HALL-52: asked one diagonal after the other, a floor without a known angle that is said to close is the right one", () => {
  const cases = record({ count: integer({ min: 4, max: 7 }), seed: integer({ min: 1, max: 1_000_000 }) });
  let said = 0;
  assert(
    property(cases, ({ count, seed }) => {
      const corners = starFloor(count, seed);
      const found = asked(untold(corners), corners);
      if (found === null) return;
      said += 1;
      for (const from of corners.keys())
        for (const to of corners.keys())
          expect(Math.abs(far(found.outline, from, to) - far(corners, from, to))).toBeLessThan(100);
    }),
    { numRuns: 60 },
  );
  // of 60 such floors it may give up on a few, never on many
  expect(said).toBeGreaterThan(54);
});

/** What comes out after every diagonal that was asked for is measured; null where no hall is found or it does not close. */
function asked(walls: readonly MeasuredWall[], corners: Polygon) {
  let diagonals: readonly MeasuredDiagonal[] = [];
  for (let step = 0; step < 2 * corners.length; step++) {
    const found = closeMeasuredWalls(walls, diagonals);
    if (!found.ok) return null;
    const { next, closes } = found.value;
    if (next === null) return closes ? found.value : null;
    diagonals = [...diagonals, { from: next.from, to: next.to, length: far(corners, next.from, next.to) }];
  }
  return null;
}

/** Corners round a middle, 3 to 9 m from it, each in its own part of the circle. */
function starFloor(count: number, seed: number): Polygon {
  let state = seed;
  const share = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return Array.from({ length: count }, (_, index): Point => {
    const angle = ((index + 0.2 + 0.6 * share()) / count) * 2 * Math.PI;
    const reach = 3000 + 6000 * share();
    return [Math.round(reach * Math.cos(angle)), Math.round(reach * Math.sin(angle))];
  });
}
