import { expect, test } from "vitest";
import { rotatePolygon } from "#kernels/geometry";
import { straightened } from "./straightened.ts";

test("HALL-54: corners some degrees off square become square, and walls stay near what they were", () => {
  // a room of 8 × 12 m whose corner C is 0.20 m too far to the right: 1° at 12 m
  const outline = straightened(
    [
      [0, 0],
      [8000, 0],
      [8200, 12_000],
      [0, 12_000],
    ],
    5,
    10,
  );
  const [a, b, c, d] = outline;
  expect([a?.[1], b?.[0], c?.[1], d?.[0]]).toEqual([b?.[1], c?.[0], d?.[1], a?.[0]]);
  // the walls A–B and C–D of 8.00 and 8.20 m meet in the middle
  expect((b?.[0] ?? 0) - (a?.[0] ?? 0)).toBe(8100);
  expect((c?.[1] ?? 0) - (b?.[1] ?? 0)).toBe(12_000);
});

test("HALL-54: a plan that was photographed askew is turned level by the smaller way", () => {
  const room = [
    [0, 0],
    [6000, 0],
    [6000, 9000],
    [0, 9000],
  ] as const;
  for (const askew of [7, -30]) {
    const outline = straightened(rotatePolygon(room, askew), 5, 10);
    const [a = [0, 0], , c = [0, 0]] = outline;
    expect([c[0] - a[0], c[1] - a[1]]).toEqual([6000, 9000]);
  }
});

test("HALL-54: a slanting corner stays slanting", () => {
  // from (9, 4) to (7, 6) m: 45°, far from square
  const outline = straightened(
    [
      [0, 0],
      [9000, 0],
      [9000, 4000],
      [7000, 6000],
      [0, 6000],
    ],
    5,
    10,
  );
  expect(outline).toEqual([
    [0, 0],
    [9000, 0],
    [9000, 4000],
    [7000, 6000],
    [0, 6000],
  ]);
});

test("HALL-54: where nothing is near square the outline is only turned and rounded", () => {
  // an equilateral triangle of 6 m: corners of 60° turn by 120°
  const outline = straightened(
    [
      [0, 0],
      [6000, 0],
      [3000, 5196],
    ],
    5,
    10,
  );
  expect(outline).toEqual([
    [0, 0],
    [6000, 0],
    [3000, 5200],
  ]);
});
