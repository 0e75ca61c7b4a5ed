import { type CurrencyCode, isCurrency } from "#core/words";
import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { type ChargedSlot, chargedSlot } from "./charged-slot.ts";
import type { SlotMinutes } from "./charged-slot-types.ts";
import type { HireTerms } from "./hire-terms.ts";
import { hireTermsSchema } from "./hire-terms-document.ts";
import { readHireTerms } from "./read-hire-terms.ts";

const TUESDAY = "2027-05-11";
const SATURDAY = "2027-05-15";
const SUNDAY = "2027-05-16";
const JANUARY = "2027-01-12";

const sixty: SlotMinutes = { setUp: 20, class: 60, packDown: 15 };

function currency(code: string): CurrencyCode {
  if (!isCurrency(code)) throw new Error(code);
  return code;
}

function terms(input: object, code = "GBP"): HireTerms {
  const read = readHireTerms(hireTermsSchema.parse(input), currency(code), "hire");
  if (!read.ok) throw new Error(read.problems.map(({ code: it, place }) => `${it} at ${place}`).join());
  return read.value;
}

function slot(input: object, date = TUESDAY, minutes = sixty): ChargedSlot {
  return chargedSlot(terms(input), minutes, Temporal.PlainDate.from(date));
}

const sums = ({ working }: ChargedSlot): readonly string[] =>
  working.map(({ label, sum, amount }) => `${label}: ${sum} = ${amount}`);

test("HIRE-2 a 60-minute class needs the hall for its set-up and pack-down too", () => {
  // 20 + 60 + 15 = 95 min; 95 ÷ 60 × 14.00 = 22.1667 → 22.17
  expect(slot({ perHour: "14.00" })).toMatchObject({ needed: 95, charged: 95, hire: 2217 });
});

test("HIRE-2 free minutes eat set-up and pack-down, never the class", () => {
  // 30 free before eats all 20 of set-up and no more; 10 free after leaves 5 of 15
  const free = { perHour: "12.00", freeBeforeMinutes: 30, freeAfterMinutes: 10 };
  expect(slot(free)).toMatchObject({ needed: 65, charged: 65, hire: 1300 });
  expect(sums(slot(free))[0]).toBe(
    "Time needed: (20 set-up − 20 free) + 60 class + (15 pack-down − 10 free) = 65 min",
  );
});

const charged = (minimumMinutes: number, incrementMinutes: number): number =>
  slot({ perHour: "14.00", minimumMinutes, incrementMinutes }).charged;

test("HIRE-3 the charged time is the next multiple of the increment, and the minimum at least", () => {
  // 95 → 15s 105, 30s 120, 60s 120; 95s as it is; a minimum of 100 is charged as 100, one of 60 not at all
  expect([
    charged(0, 15),
    charged(0, 30),
    charged(0, 60),
    charged(0, 95),
    charged(100, 1),
    charged(60, 15),
  ]).toEqual([105, 120, 120, 95, 100, 105]);
});

const chargedLine = (minimumMinutes: number, incrementMinutes: number): string | undefined =>
  sums(slot({ perHour: "14.00", minimumMinutes, incrementMinutes }))[1];

test("HIRE-3 HIRE-10 the working says whether the step, the minimum or neither made the charged time", () => {
  // 95 needed: steps of 30 make 120, which a minimum of 100 or 120 leaves alone and one of 130 does not
  expect([chargedLine(100, 30), chargedLine(120, 30), chargedLine(130, 30), chargedLine(0, 5)]).toEqual([
    "Time charged: 95 min, up to the next 30 = 120 min",
    "Time charged: 95 min, up to the next 30 = 120 min",
    "Time charged: 95 min, at least 130 = 130 min",
    "Time charged: 95 min as it is = 95 min",
  ]);
});

test("HIRE-3 a cheaper hour with a two-hour minimum may cost more than a dearer one by the half hour", () => {
  // 14.00 with 2 h minimum: 28.00; 18.00 by the half hour for a need of 60 + 15 + 10 = 85 → 90 min: 27.00
  const short = { setUp: 15, class: 60, packDown: 10 };
  expect(slot({ perHour: "14.00", minimumMinutes: 120 }, TUESDAY, short).hire).toBe(2800);
  expect(slot({ perHour: "18.00", incrementMinutes: 30 }, TUESDAY, short).hire).toBe(2700);
});

test("HIRE-4 a new rate holds from its own day on, and the last one begun wins", () => {
  const rising = {
    perHour: "14.00",
    incrementMinutes: 60,
    rates: [
      { from: "2027-09-01", perHour: "16.00" },
      { from: "2027-01-12", perSession: "31.00" },
    ],
  };
  // 2 h × 14.00 the day before, 31.00 a session from 12 January, 2 h × 16.00 from September
  expect(slot(rising, "2027-01-11").hire).toBe(2800);
  expect(slot(rising, "2027-01-12").hire).toBe(3100);
  expect(slot(rising, "2027-09-07").hire).toBe(3200);
  expect(sums(slot(rising, "2027-09-07"))[2]).toBe(
    "Hall, by the hour: 2 h × 16.00 (rate since 2027-09-01) = 32.00",
  );
});

test("HIRE-5 the weekend factor is for Saturday and Sunday", () => {
  const weekend = { perHour: "14.00", incrementMinutes: 60, weekendFactor: 1.25 };
  // 2 h × 14.00 × 1.25 = 35.00
  expect(
    [TUESDAY, "2027-05-14", SATURDAY, SUNDAY, "2027-05-17"].map((date) => slot(weekend, date).hire),
  ).toEqual([2800, 2800, 3500, 3500, 2800]);
});

test("HIRE-6 the volume band of the hours reached holds for every hour", () => {
  const bands = [
    { fromHoursPerYear: 125, factor: 0.5 },
    { fromHoursPerYear: 50, factor: 0.7 },
  ];
  const hire = (hoursPerYear: number): number =>
    slot({ perHour: "22.00", incrementMinutes: 60, bands, hoursPerYear }).hire;
  // 2 h × 22.00 = 44.00; × 0.7 = 30.80 from 50 h; × 0.5 = 22.00 from 125 h
  expect([49.9, 50, 124, 125, 400].map(hire)).toEqual([4400, 3080, 3080, 2200, 2200]);
});

test("HIRE-6 without known hours a year no band is used, and the working says so", () => {
  const unknown = slot({
    perHour: "22.00",
    incrementMinutes: 60,
    bands: [{ fromHoursPerYear: 0, factor: 0.5 }],
  });
  expect(unknown.hire).toBe(4400);
  expect(sums(unknown)).toContain("Volume bands: not used: hours a year are not known = ");
});

test("HIRE-7 HIRE-10 the set-up factor is for the set-up that is charged, and added minutes are at the full rate", () => {
  // need 95, charged 120; 10 of 20 set-up are free, so need 85, charged 90: 80 min full and 10 min at half
  // 80 ÷ 60 × 18.00 = 24.00; 10 ÷ 60 × 18.00 × 0.5 = 1.50
  const half = { perHour: "18.00", incrementMinutes: 30, freeBeforeMinutes: 10, setUpFactor: 0.5 };
  expect(slot(half).hire).toBe(2550);
  expect(sums(slot(half)).slice(2)).toEqual([
    "Hall, by the hour: 80 ÷ 60 h × 18.00 = 24.00",
    "Set-up at its own rate: 10 ÷ 60 h × 18.00 × 0.5 = 1.50",
  ]);
});

test("HIRE-7 set-up that is all free has no line of its own", () => {
  const allFree = { perHour: "18.00", freeBeforeMinutes: 20, setUpFactor: 0.5 };
  // 60 + 15 = 75 min: 1.25 h × 18.00
  expect(sums(slot(allFree)).slice(2)).toEqual(["Hall, by the hour: 1.25 h × 18.00 = 22.50"]);
});

test("HIRE-7 a price a session has no set-up of its own", () => {
  expect(slot({ perSession: "30.00", setUpFactor: 0.5 })).toMatchObject({ hire: 3000, charged: 95 });
});

test("HIRE-8 heating is for each charged hour in its months, beside a price a session too", () => {
  const heating = { perHour: "1.50", months: [10, 11, 12, 1, 2, 3] };
  // 2 h × 14.00 + 2 h × 1.50 = 31.00 in January, 28.00 in May; 30.00 + 3.00 a session
  expect(slot({ perHour: "14.00", incrementMinutes: 30, heating }, JANUARY).hire).toBe(3100);
  expect(slot({ perHour: "14.00", incrementMinutes: 30, heating }).hire).toBe(2800);
  expect(slot({ perSession: "30.00", minimumMinutes: 120, heating }, JANUARY).hire).toBe(3300);
});

test("HIRE-8 the weekend and the bands leave heating alone", () => {
  const heated = {
    perHour: "10.00",
    incrementMinutes: 60,
    weekendFactor: 2,
    bands: [{ fromHoursPerYear: 0, factor: 0.5 }],
    hoursPerYear: 10,
    heating: { perHour: "3.00", months: [5] },
  };
  // 2 h × 10.00 × 2 × 0.5 = 20.00, with 2 h × 3.00 = 6.00
  expect(slot(heated, SATURDAY).hire).toBe(2600);
});

test("HIRE-9 each line is rounded half up to the coin and the hire is the sum of the lines", () => {
  // 95 ÷ 60 × 0.06 = 0.095 → 0.10 twice: hall and heating; 0.20 and not 0.19
  const pennies = slot({ perHour: "0.06", heating: { perHour: "0.06", months: [5] } });
  expect(pennies.hire).toBe(20);
  expect(sums(pennies).slice(2)).toEqual([
    "Hall, by the hour: 95 ÷ 60 h × 0.06, to the nearest coin = 0.10",
    "Heating: 95 ÷ 60 h × 0.06, to the nearest coin = 0.10",
  ]);
});

test("HIRE-9 a currency without small coins is rounded to its whole ones", () => {
  // 95 ÷ 60 × 1000 = 1583.33 → 1583 yen
  expect(chargedSlot(terms({ perHour: "1000" }, "JPY"), sixty, Temporal.PlainDate.from(TUESDAY)).hire).toBe(
    1583,
  );
});

const someSlot = fc.record({
  setUp: fc.integer({ min: 0, max: 120 }),
  class: fc.integer({ min: 1, max: 180 }),
  packDown: fc.integer({ min: 0, max: 120 }),
});
const someRules = fc.record({
  minimumMinutes: fc.integer({ min: 0, max: 240 }),
  incrementMinutes: fc.integer({ min: 1, max: 120 }),
  freeBeforeMinutes: fc.integer({ min: 0, max: 60 }),
  freeAfterMinutes: fc.integer({ min: 0, max: 60 }),
});

test("HIRE-2 HIRE-3 what is charged covers what is needed, never less than the class, by the hall's own steps", () => {
  fc.assert(
    fc.property(someSlot, someRules, (minutes, rules) => {
      const { needed, charged: paid } = slot({ perHour: "14.00", ...rules }, TUESDAY, minutes);
      expect(needed).toBeGreaterThanOrEqual(minutes.class);
      expect(needed).toBeLessThanOrEqual(minutes.setUp + minutes.class + minutes.packDown);
      expect(paid).toBeGreaterThanOrEqual(needed);
      expect(paid === rules.minimumMinutes || paid % rules.incrementMinutes === 0).toBe(true);
      // one step less would not do
      expect(paid === rules.minimumMinutes || paid - rules.incrementMinutes < needed).toBe(true);
    }),
  );
});

test.each(["GBP", "USD"])("HIRE-9 in %s the money lines of any slot add to the hire", (code) => {
  const rate = fc.integer({ min: 0, max: 9999 }).map((pennies) => (pennies / 100).toFixed(2));
  fc.assert(
    fc.property(someSlot, someRules, rate, rate, (minutes, rules, perHour, heat) => {
      const heating = { perHour: heat, months: [5] };
      const input = { perHour, ...rules, heating, setUpFactor: 0.5, weekendFactor: 1.1 };
      const { hire, working } = chargedSlot(terms(input, code), minutes, Temporal.PlainDate.from(SATURDAY));
      const lines = working.slice(2).map(({ amount }) => Math.round(Number(amount) * 100));
      expect(lines.reduce((sum, line) => sum + line, 0)).toBe(hire);
    }),
  );
});
