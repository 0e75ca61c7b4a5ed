import * as fc from "fast-check";
import { expect, test } from "vitest";
import { evening } from "./evening.ts";
import { eveningJson } from "./evening-json.ts";

test("PRICE-11 no input makes the reader throw", () => {
  fc.assert(
    fc.property(fc.anything(), (input) => {
      expect(evening(input).ok).toBe(false);
    }),
  );
});

const anyNumber = fc.oneof(
  // mostly small ones, so that about every third evening is sound
  { weight: 60, arbitrary: fc.integer({ min: 1, max: 10 }) },
  fc.integer({ min: -10, max: 2000 }),
  fc.double(),
  fc.constantFrom(0, 1, -1, 1e-9, 1e308, Number.MAX_SAFE_INTEGER),
);
const anyMoney = fc.oneof(
  { weight: 60, arbitrary: fc.integer({ min: 0, max: 999 }).map(String) },
  fc.integer({ min: 0, max: 99_999 }).map((coins) => (coins / 100).toFixed(2)),
  fc.constantFrom("0", "-1", "12.505", "1000000000", "999999999999.999999", "1e9", "", "£5"),
);
const anyDate = fc.oneof(
  { weight: 60, arbitrary: fc.integer({ min: 1, max: 9 }).map((day) => `2027-05-0${day}`) },
  fc.constantFrom("2027-02-29", "0000-01-01", "9999-12-31", "today"),
);
const few = { maxLength: 2 };
const anyHire = fc.record(
  {
    perHour: anyMoney,
    minimumMinutes: anyNumber,
    incrementMinutes: anyNumber,
    freeBeforeMinutes: anyNumber,
    freeAfterMinutes: anyNumber,
    heating: fc.record({ perHour: anyMoney, months: fc.array(anyNumber, few) }),
    setUpFactor: anyNumber,
    weekendFactor: anyNumber,
    bands: fc.array(fc.record({ fromHoursPerYear: anyNumber, factor: anyNumber }), few),
    hoursPerYear: anyNumber,
    rates: fc.array(fc.record({ from: anyDate, perHour: anyMoney }), few),
  },
  { requiredKeys: ["perHour"] },
);
const anyMinutes = fc.record(
  { setUp: anyNumber, class: anyNumber, packDown: anyNumber },
  { noNullPrototype: true },
);
const nearlyAnEvening = fc.record({
  currency: fc.constantFrom("GBP", "USD", "JPY", "KWD", "GBP", "gbp"),
  date: anyDate,
  hire: anyHire,
  minutes: anyMinutes,
  travelCost: anyMoney,
  perHead: anyMoney,
  prices: fc.record({
    single: anyMoney,
    passes: fc.array(fc.record({ classes: anyNumber, price: anyMoney }), few),
  }),
  mix: fc.oneof(
    {
      weight: 4,
      arbitrary: fc.constantFrom(
        { single: 1 },
        { single: 0.5, free: 0.5 },
        { single: 0.4, "pass-9": 0.6 },
        { free: 1 },
      ),
    },
    fc.dictionary(
      fc.constantFrom("single", "pass-10", "free", "concession", "__proto__", "drop-in"),
      anyNumber,
    ),
  ),
  heads: anyNumber,
});

test("PRICE-11 no input of nearly the right shape makes the sum throw, and every problem has a place", () => {
  fc.assert(
    fc.property(nearlyAnEvening, (input) => {
      const read = evening(input);
      if (read.ok) expect(eveningJson(read.value).cost).toMatch(/^\d+(\.\d+)?$/);
      else for (const { place } of read.problems) expect(place).not.toBe("");
    }),
    { numRuns: 500 },
  );
});

test("PRICE-11 the dearest evening that is read is still worked out in whole coins", () => {
  // 1e9 × 10 × 10 for each of 3 × 24 = 72 hours: 7.2e12
  const day = 1440;
  const read = evening({
    currency: "GBP",
    date: "2027-05-15",
    hire: {
      perHour: "1000000000",
      incrementMinutes: day,
      weekendFactor: 10,
      bands: [{ fromHoursPerYear: 0, factor: 10 }],
      hoursPerYear: 1,
    },
    minutes: { setUp: day, class: day, packDown: day, travel: day, other: day },
    prices: { single: "1000000000" },
    mix: { single: 1 },
    heads: 1000,
  });
  expect(read.ok && eveningJson(read.value)).toMatchObject({ hire: "7200000000000.00", breakEven: 7200 });
});
