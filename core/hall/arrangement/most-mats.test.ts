import { type Point, rotateAboutOrigin } from "#kernels/geometry";
import { areaBound, checkPlaced } from "#kernels/packing";
import { aHall, randomHalls } from "#testing";
import { assert, property } from "fast-check";
import { expect, test } from "vitest";
import { outwardOf } from "../floor-walls.ts";
import type { Hall } from "../hall.ts";
import { hallFrame, wallInWords } from "../hall-frame.ts";
import { floorToFill } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { cornerName } from "../corner-names.ts";
import { added, direction, dot, scaled } from "../vectors.ts";
import type { MostMatPlan } from "./arrangement-types.ts";
import { axesToTry } from "./axes-to-try.ts";
import { advanceMostMats, mostMatPlan, startMostMats } from "./most-mats.ts";
import type { NamedString } from "./places-set-out-types.ts";
import { setOutInWords } from "./set-out-in-words.ts";

/** 5.5 by 6 m: lines hold 10, most holds more (mats both ways round). */
const room = aHall({
  outline: [
    [0, 0],
    [5.5, 0],
    [5.5, 6],
    [0, 6],
  ],
});

test("HALL-64: a run has a plan at once, says what it is doing, and comes to the same in any portions", () => {
  const start = startMostMats(room);
  expect(start.progress.count).toBeGreaterThan(0);
  expect(start.progress.steps).toBe(0);
  const inOne = advanceMostMats(startMostMats(room), 40);
  let inMany = startMostMats(room);
  for (let portion = 0; portion < 8; portion++) inMany = advanceMostMats(inMany, 5);
  expect(inMany.progress).toEqual(inOne.progress);
  expect(mostMatPlan(inMany)).toEqual(mostMatPlan(inOne));
});

test("HALL-64: count never falls and bound never rises while it runs; only proof ends it", () => {
  let run = startMostMats(room);
  for (let step = 0; step < 60 && !run.progress.finished; step++) {
    const next = advanceMostMats(run, 1);
    expect(next.progress.count).toBeGreaterThanOrEqual(run.progress.count);
    expect(next.progress.bound).toBeLessThanOrEqual(run.progress.bound);
    expect(next.progress.finished).toBe(next.progress.proven);
    run = next;
  }
  const { progress } = run;
  expect(progress.sentence).toBe(
    progress.proven
      ? `${progress.count} mats, and no more can fit.`
      : `${progress.count} mats so far, and no more than ${progress.bound} can fit.`,
  );
});

test("HALL-64: what it is doing names the wall directions only where there are several", () => {
  expect(startMostMats(room).progress.whatItIsDoing).toMatch(
    /^(Done: it is proven|Looking for (one mat|up to \d+ mats) more, and for a proof that there is none)\.$/,
  );
  const bay = aHall({
    outline: [
      [0, 0],
      [8, 0],
      [8, 10],
      [6, 12],
      [0, 12],
    ],
  });
  expect(startMostMats(bay).progress.whatItIsDoing).toMatch(
    /, along 2 wall directions; none of them are settled\.$/,
  );
});

test("HALL-65: who lays the mats from the figures alone lays the same mats, all of them allowed", () => {
  let laidFromFigures = 0;
  assert(
    property(randomHalls(), (hall: Hall) => {
      const plan = mostMatPlan(advanceMostMats(startMostMats(hall), 8));
      const laid = matsFromFigures(hall, plan);
      for (const [index, mat] of laid.entries()) {
        const planned = plan.mats[index];
        if (planned === undefined) continue;
        laidFromFigures++;
        // walls that were turned and rounded to the millimetre are square to 2 mm in 10 m; the ends of a string are
        // to the millimetre, which over its length turns it by little
        const upright = hall.outline.every(([x, y]) => x % 10 === 0 && y % 10 === 0);
        const { toTheCentimetre, strings } = plan.placesSetOut;
        const short =
          upright && toTheCentimetre && strings.length === 0 ? 0.01 : strings.length === 0 ? 2 : 10;
        expect(Math.abs(mat[0] - planned.centre[0])).toBeLessThan(short);
        expect(Math.abs(mat[1] - planned.centre[1])).toBeLessThan(short);
      }
      expect(checkPlaced(floorToFill(hall), hall.mat, hall.gaps, plan.mats)).toEqual([]);
    }),
    { numRuns: 15 },
  );
  expect(laidFromFigures).toBeGreaterThan(150);
});

/** The centre of each mat by its two figures. */
function matsFromFigures(hall: Hall, plan: MostMatPlan): readonly Point[] {
  let index = 0;
  return plan.placesSetOut.groups.flatMap((group) =>
    group.places.map((place): Point => {
      const placed = plan.mats[index++];
      const one = lineAt(hall, plan, placed, group.outFrom, group.out);
      const other = lineAt(hall, plan, placed, group.alongFrom, place.along);
      const det = one.way[0] * other.way[1] - one.way[1] * other.way[0];
      return [
        (one.at * other.way[1] - other.at * one.way[1]) / det,
        (one.way[0] * other.at - other.way[0] * one.at) / det,
      ];
    }),
  );
}

/** The line square to `way` on which the mat's centre lies, from the wall or the string that it was measured from. */
function lineAt(
  hall: Hall,
  { placesSetOut }: MostMatPlan,
  placed: PlacedMat | undefined,
  from: string,
  figure: number,
): { way: Point; at: number } {
  const string = placesSetOut.strings.find((it) => it.name === from);
  const { way, level } = string === undefined ? fromWall(hall, from) : fromString(hall, string, placed);
  const lengthwise = Math.abs(dot(rotateAboutOrigin([1, 0], placed?.angle ?? 0), way)) > 0.5;
  return { way, at: level + figure + (lengthwise ? hall.mat.length : hall.mat.width) / 2 };
}

function fromWall(hall: Hall, name: string): { way: Point; level: number } {
  const frame = hallFrame(hall);
  const index = hall.outline.findIndex((_, each) => wallInWords(hall.outline, frame, each) === name);
  const outward = outwardOf(hall.outline, index);
  const way: Point = [0 - outward[0], 0 - outward[1]];
  return { way, level: dot(hall.outline[index] ?? [0, 0], way) };
}

/** Square to the string, on the side on which the mat lies. */
function fromString(
  { outline }: Hall,
  { from, to }: NamedString,
  placed: PlacedMat | undefined,
): { way: Point; level: number } {
  const [start, end] = [from, to].map(({ corner, distance }): Point => {
    const index = outline.findIndex((_, each) => cornerName(each) === corner);
    const at: Point = outline[index] ?? [0, 0];
    const next: Point = outline[(index + 1) % outline.length] ?? [0, 0];
    return added(at, scaled(direction(at, next), distance));
  });
  const along = direction(start ?? [0, 0], end ?? [0, 0]);
  const left: Point = [0 - along[1], along[0]];
  const beyond = dot(placed?.centre ?? [0, 0], left) > dot(start ?? [0, 0], left);
  const way: Point = beyond ? left : scaled(left, -1);
  return { way, level: dot(start ?? [0, 0], way) };
}

test("HALL-65: mats of whole centimetres in a hall of whole centimetres are told in whole centimetres", () => {
  const { placesSetOut } = mostMatPlan(advanceMostMats(startMostMats(room), 30));
  expect(placesSetOut.toTheCentimetre).toBe(true);
  expect(placesSetOut.sentences.slice(1).every((it) => /^Mats? \d+/.test(it))).toBe(true);
});

test("HALL-65: a mat that no whole centimetre suits is told to the millimetre, and that is said", () => {
  // 3 mats of 0.665 m side by side with 0.50 m between and at both ends take 3 · 0.665 + 4 · 0.50 = 3.995 m: with
  // 4 mm left over the first starts at 0.500 to 0.504 m and the second 1.165 m further at 1.665 to 1.669 m: between
  // 1.66 and 1.67. Front to back 2.90 − 1.83 − 1.00 = 0.07 m are left, so 0.50 to 0.57 m suits.
  const tight = aHall({
    outline: [
      [0, 0],
      [3.999, 0],
      [3.999, 2.9],
      [0, 2.9],
    ],
    mat: { length: 1.83, width: 0.665 },
  });
  const plan = mostMatPlan(advanceMostMats(startMostMats(tight), 10));
  expect(plan.count).toBe(3);
  expect(plan.placesSetOut.toTheCentimetre).toBe(false);
  expect(setOutInWords(plan)[1]).toBe(
    "A figure with three decimals is to the millimetre: a whole centimetre would break a gap there.",
  );
  expect(setOutInWords(plan)[2]).toMatch(
    /, 0\.5\d m from the front wall and 0\.50(\d)? m, 1\.66\d m and 2\.83(\d)? m from the left wall\.$/,
  );
});

test("HALL-71: on a floor of very many wall directions those with most wall are tried, and only the area bounds the rest", () => {
  // 26 walls at 13 directions modulo 90°; the longest are those of the flattened sides
  const drum = aHall({
    outline: Array.from({ length: 26 }, (_, wall): [number, number] => [
      4 * Math.cos((wall * Math.PI) / 13),
      3 * Math.sin((wall * Math.PI) / 13),
    ]),
  });
  const { tried, progress } = startMostMats(drum);
  expect(tried.axes).toHaveLength(12);
  expect(tried.leftOut).toBeGreaterThan(0);
  expect(progress.bound).toBe(Math.max(progress.count, areaBound(floorToFill(drum), drum.mat, drum.gaps)));
  expect(progress.proven).toBe(false);
});

test("HALL-71: an axis that the hall states is the only one and leaves none out", () => {
  expect(axesToTry(aHall({ axis: 30 }))).toEqual({ axes: [30], directions: 1, leftOut: 0 });
  expect(axesToTry(aHall())).toEqual({ axes: "auto", directions: 1, leftOut: 0 });
});

test("HALL-65: in a room whose walls all stand at a slant to the mats, strings take their place", () => {
  // a square of 8.49 m on its corner, mats along the drawing: every wall is at 45° to them
  const diamond = aHall({
    outline: [
      [0, -6],
      [6, 0],
      [0, 6],
      [-6, 0],
    ],
    axis: 0,
  });
  const { placesSetOut, count } = mostMatPlan(advanceMostMats(startMostMats(diamond), 6));
  expect(count).toBeGreaterThan(6);
  expect(placesSetOut.strings.map((it) => it.name)).toEqual(["string 1", "string 2"]);
  expect(placesSetOut.toTheCentimetre).toBe(true);
  expect(placesSetOut.sentences[1]).toMatch(
    /^Stretch string 1 from .*, \d\.\d+ m from corner [A-D], to .*, \d\.\d+ m from corner [A-D]\.$/,
  );
  for (const group of placesSetOut.groups)
    expect(new Set([group.outFrom, group.alongFrom])).toEqual(new Set(["string 1", "string 2"]));
});
