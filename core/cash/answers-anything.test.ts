import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { moneyAnswer, type YearMoneyDocumentInput } from "./index.ts";

const pounds = fc.integer({ min: 0, max: 30_000 }).map((pence) => (pence / 100).toFixed(2));
const band = fc.tuple(fc.nat(9000), fc.nat(9000), fc.nat(9000)).map((drawn) => {
  const [low = 0, middle = 0, high = 0] = [...drawn].sort((one, other) => one - other);
  return { low: (low / 100).toFixed(2), middle: (middle / 100).toFixed(2), high: (high / 100).toFixed(2) };
});
const day = fc
  .integer({ min: 0, max: 900 })
  .map((days) => Temporal.PlainDate.from("2026-06-01").add({ days }).toString());
const paid = fc.record({
  when: fc.constantFrom(
    "on-the-day" as const,
    "days-after" as const,
    "after-month" as const,
    "before-month" as const,
  ),
  days: fc.integer({ min: 0, max: 90 }),
});

const work = fc.record({
  kind: fc.constantFrom("own" as const, "studio" as const, "private" as const),
  dates: fc.array(day, { maxLength: 25 }),
  perSession: fc.oneof(pounds, band),
  changes: fc.array(fc.record({ from: day, perSession: fc.oneof(pounds, band) }), { maxLength: 3 }),
  paid,
  costs: fc.array(fc.record({ name: fc.constant("hall"), perSession: pounds, paid }), { maxLength: 2 }),
  passes: fc.record({
    share: fc.constantFrom(0, 0.3, 1),
    sessions: fc.integer({ min: 1, max: 12 }),
    owed: pounds,
  }),
});

const move = fc.record({
  name: fc.constant("other"),
  way: fc.constantFrom("in" as const, "out" as const),
  amount: fc.oneof(pounds, band),
  on: day,
  everyMonths: fc.constantFrom(1, 3, 12),
  business: fc.boolean(),
});

const documents: fc.Arbitrary<YearMoneyDocumentInput> = fc
  .record({
    place: fc.constantFrom("uk", "scotland", "us"),
    from: day,
    months: fc.integer({ min: 1, max: 24 }),
    opening: fc.integer({ min: -50_000, max: 90_000 }).map((pence) => (pence / 100).toFixed(2)),
    work: fc.array(work, { minLength: 1, maxLength: 4 }),
    moves: fc.array(move, { maxLength: 3 }),
    other: pounds,
    last: fc.option(fc.record({ bill: pounds, onAccount: pounds }), { nil: undefined }),
    need: fc.integer({ min: 1, max: 90_000 }).map((pence) => (pence / 100).toFixed(2)),
  })
  .map(({ place, other, last, need, ...rest }) => ({
    ...rest,
    currency: place === "us" ? "USD" : "GBP",
    work: rest.work.map((it, at) => ({ ...it, id: `class ${at}` })),
    tax: { place, other, ...(last === undefined ? {} : { last }) },
    path: { need, mayDrop: [{ id: "class 0", hours: 2 }] },
  }));

const coins = (text: string | undefined) => Math.round(Number(text) * 100);

test("CASH-8: opening and all that moved are the closing balance, month after month, to the coin", () => {
  fc.assert(
    fc.property(documents, (document) => {
      const read = moneyAnswer(document);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      let balance = coins(read.value.json.opening);
      for (const month of read.value.json.months) {
        balance += coins(month.in) - coins(month.out) - coins(month.tax);
        expect(coins(month.end.middle)).toBe(balance);
        expect(coins(month.lowest.middle)).toBeLessThanOrEqual(balance);
      }
      const lines = read.value.json.working.filter(({ part, total }) => part === "bank" && total !== true);
      expect(lines.reduce((sum, { amount }) => sum + coins(amount), 0)).toBe(balance);
    }),
    { numRuns: 150 },
  );
});

test("CASH-6: without tax low ≤ middle ≤ high at the end of every month", () => {
  fc.assert(
    fc.property(documents, ({ tax: _tax, ...document }) => {
      const plain = { ...document, work: (document.work ?? []).map(({ passes: _passes, ...it }) => it) };
      const read = moneyAnswer(plain);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      for (const { end } of read.value.json.months) {
        expect(coins(end.low)).toBeLessThanOrEqual(coins(end.middle));
        expect(coins(end.middle)).toBeLessThanOrEqual(coins(end.high));
      }
    }),
    { numRuns: 100 },
  );
});

test("CASH-25: what is put aside of every receipt is never less than the year's bill, nor is a pot below nought", () => {
  fc.assert(
    fc.property(documents, (document) => {
      const read = moneyAnswer(document);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      for (const year of read.value.json.tax?.years ?? [])
        expect((coins(year.received) * year.setAsidePercent) / 100).toBeGreaterThanOrEqual(coins(year.bill));
      for (const { pot } of read.value.json.months) expect(coins(pot ?? "0")).toBeGreaterThanOrEqual(0);
      expect(read.value.json.sentences.join(" ")).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 150 },
  );
});
