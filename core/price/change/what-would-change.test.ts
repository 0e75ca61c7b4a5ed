import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { type Dial, whatWouldChange } from "./what-would-change.ts";

const dial = (path: string, now: number, more: Partial<Dial> = {}): Dial => ({
  path,
  name: path,
  unit: "plain",
  now,
  step: 1,
  least: 0,
  most: 100,
  guess: false,
  ...more,
});

const evening = { heads: 8, each: 8, cost: 50 };

/** heads × each ≥ cost, with one of them changed */
function pays({ path }: Dial, value: number): boolean {
  const turned = new Map(Object.entries(evening)).set(path, value);
  const [heads = 0, each = 0, cost = 0] = ["heads", "each", "cost"].map((name) => turned.get(name));
  return heads * each >= cost;
}

test("PRICE-80 each figure is turned alone to where the decision changes, the nearest first", () => {
  // 8 × 8 = 64 ≥ 50: 6 heads bring 48, at 6 each 48, and a cost of 65 is too much
  const found = whatWouldChange(
    [dial("cost", 50), dial("heads", 8, { guess: true }), dial("each", 8, { step: 0.1 })],
    pays,
  );
  expect(found.map(({ dial: { path }, at, becomes }) => [path, at, becomes])).toEqual([
    ["each", 6.2, false],
    ["heads", 6, false],
    ["cost", 65, false],
  ]);
  expect(found.map(({ nearness }) => nearness?.toFixed(3))).toEqual(["0.225", "0.250", "0.300"]);
  expect(found[1]?.dial.guess).toBe(true);
});

test("PRICE-80 a figure that changes nothing within its bounds comes last and says so", () => {
  const found = whatWouldChange([dial("cost", 50, { most: 60 }), dial("heads", 8)], pays);
  expect(found.map(({ dial: { path }, at }) => [path, at])).toEqual([
    ["heads", 6],
    ["cost", null],
  ]);
});

function within(_: Dial, value: number): boolean {
  return value > 6 && value < 15;
}

test("PRICE-80 of two ways the nearer one is told", () => {
  expect(whatWouldChange([dial("x", 10)], within)[0]).toMatchObject({ at: 6, becomes: false, nearness: 0.4 });
  expect(whatWouldChange([dial("x", 11)], within)[0]).toMatchObject({ at: 15 });
});

test("PRICE-80 a figure that is nought now is measured by the most it can be", () => {
  const found = whatWouldChange([dial("x", 0)], (_, value) => (value >= 25 ? "Barn" : "Quay"));
  expect(found[0]).toMatchObject({ at: 25, becomes: "Barn", nearness: 0.25 });
});

test("PRICE-80 a figure far below its own step is measured as nought is, never by an endless share", () => {
  // 5e-324 is the least number a computer can hold: a step of 1 is no share of it that can be written
  const [flip] = whatWouldChange([dial("heads", 5e-324)], (_, value) => value >= 7);
  expect([flip?.at, flip?.nearness]).toEqual([7, 0.07]);
});

test("PRICE-80 the value told is the first whole step at which the decision is another", () => {
  assert(
    property(integer({ min: 0, max: 1000 }), integer({ min: 0, max: 1000 }), (now, line) => {
      const decide = (_: Dial, value: number): boolean => value >= line / 10;
      const [found] = whatWouldChange([dial("x", now / 10, { step: 0.1 })], decide);
      const up = now < line;
      // from above a line at nought nothing is lower
      const first = !up && line === 0 ? null : Number((up ? line / 10 : (line - 1) / 10).toFixed(6));
      expect(found?.at).toBe(first);
    }),
  );
});
