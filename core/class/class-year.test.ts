import type { HallDocument, HireTermsDocument } from "#core/hall";
import { hallDocumentSchema, hireTermsSchema } from "#core/hall";
import { evening, eveningJson } from "#core/price";
import { type CurrencyCode, exactText, isCurrency, type Result } from "#core/words";
import * as fc from "fast-check";
import { Fraction } from "fraction.js";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { type ClassDocument, type ClassDocumentInput, classDocumentSchema } from "./class-document.ts";
import { classYear } from "./class-year.ts";
import type { ClassYear } from "./class-year-types.ts";
import { eveningOf } from "./evening-of.ts";

const tuesdays: ClassDocumentInput = {
  name: "Tuesday evening",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, preparation: 15, admin: 10 },
  costs: { travel: "3.40", music: "0", cover: "0", other: "0", perHead: "0.20" },
  prices: { single: "10.00", passes: [{ classes: 10, price: "85.00" }], concession: "8.00" },
  mix: { single: 0.4, "pass-10": 0.4, concession: 0.1, free: 0.1 },
  heads: 8,
  year: {
    from: "2026-09-08",
    until: "2026-10-27",
    closures: [{ from: "2026-10-26", until: "2026-10-30", why: "half-term" }],
    fixedPerYear: "42.00",
  },
};

const terms = {
  perHour: "14.00",
  incrementMinutes: 30,
  heating: { perHour: "1.50", months: [10, 11, 12, 1, 2, 3] },
  rates: [{ from: "2026-09-22", perHour: "15.00" }],
};

const asClass = (input: ClassDocumentInput): ClassDocument => classDocumentSchema.parse(input);
const asHire = (input: object): HireTermsDocument => hireTermsSchema.parse(input);

function currency(code: string): CurrencyCode {
  if (!isCurrency(code)) throw new Error(code);
  return code;
}

const GBP = currency("GBP");

function value<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(result.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return result.value;
}

function problemsOf(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map(({ code, place }) => `${code} at ${place}`);
}

const pounds = (amount: Fraction): string => exactText(amount, GBP);

test("CLASS-3 CLASS-4 a year counts the dates of the weekday, less those that a closure takes", () => {
  // eight Tuesdays from 8 September to 27 October, the last of them in half-term
  const year = value(classYear(asClass(tuesdays), asHire(terms), GBP));
  expect(year.dates).toEqual([
    "2026-09-08",
    "2026-09-15",
    "2026-09-22",
    "2026-09-29",
    "2026-10-06",
    "2026-10-13",
    "2026-10-20",
  ]);
  expect(year.lost).toEqual([{ date: "2026-10-27", why: "half-term" }]);
});

test("CLASS-5 each session is costed on its own date, by month, with heating and the new rate", () => {
  // 2 h: 8 and 15 Sep at 14 = 28.00; 22 and 29 Sep at 15 = 30.00; Oct 30.00 + 3.00 heating
  // heads bring 8 × 8.00 = 64.00 an evening; travel 3.40
  // Sep: 4 × 64 − (2 × 31.40 + 2 × 33.40) = 126.40; Oct: 3 × (64 − 36.40) = 82.80
  const year = value(classYear(asClass(tuesdays), asHire(terms), GBP));
  const months = year.months.map((it) => [it.month, it.sessions, it.hire, pounds(it.contribution)]);
  expect(months).toEqual([
    ["2026-09", 4, 11600, "126.40"],
    ["2026-10", 3, 9900, "82.80"],
  ]);
  // 126.40 + 82.80 = 209.20, less 42.00
  expect([pounds(year.contribution), year.fixed, pounds(year.leaves)]).toEqual(["209.20", 4200, "167.20"]);
});

test("CLASS-9 the working of a year can be followed with a pencil", () => {
  const { working } = value(classYear(asClass(tuesdays), asHire(terms), GBP));
  expect(working.map(({ label, sum, amount }) => `${label}: ${sum} = ${amount}`)).toEqual([
    "Evenings: 8 dates − 1 closed = 7",
    "What they bring: 7 × 8 people × 8.00 = 448.00",
    "less evenings at this cost: 2 × 31.40 = 62.80",
    "less evenings at this cost: 2 × 33.40 = 66.80",
    "less evenings at this cost: 3 × 36.40 = 109.20",
    "The evenings leave:  = 209.20",
    "Fixed costs:  = 42.00",
    "The year leaves:  = 167.20",
  ]);
});

const halvedFrom = (fromHoursPerYear: number): HireTermsDocument =>
  asHire({ perHour: "14.00", incrementMinutes: 30, bands: [{ fromHoursPerYear, factor: 0.5 }] });

const septemberHire = (hire: HireTermsDocument): number =>
  value(classYear(asClass(tuesdays), hire, GBP)).months[0]?.hire ?? -1;

test("CLASS-6 hours a year for a volume band are the charged hours of the class's own dates", () => {
  // 7 sessions × 2 h = 14 h: the band from 14 h holds, the one from 15 h does not
  expect([septemberHire(halvedFrom(14)), septemberHire(halvedFrom(15))]).toEqual([4 * 1400, 4 * 2800]);
});

const hall: HallDocument = hallDocumentSchema.parse({
  name: "Quay Street Mission Room",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.8, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  currency: "GBP",
  hire: terms,
});

test("CLASS-6 CLASS-7 a session on the same day a year later is of the next twelve months", () => {
  const year = { from: "2026-09-08", until: "2027-09-08", closures: [], fixedPerYear: "52.00" };
  const [tuesday, wednesday] = [2, 3].map(
    (weekday) =>
      value(eveningOf(asClass({ ...tuesdays, weekday, year }), hall, "GBP", "2026-10-20")).sessionsPerYear,
  );
  // Tuesdays 2026-09-08 to 2027-09-07 are 53; Wednesdays 2026-09-09 to 2027-09-01 are 52, and 2027-09-08 is too late
  expect([tuesday, wednesday]).toEqual([53, 52]);
});

test("CLASS-6 stated hours a year go before counted ones", () => {
  const stated = { perHour: "14.00", hoursPerYear: 60, bands: [{ fromHoursPerYear: 50, factor: 0.5 }] };
  // 95 min at 7.00 an hour: 11.0833 → 11.08 a session, four in September
  expect(septemberHire(asHire(stated))).toBe(4 * 1108);
});

test("a class whose every date is closed has a year of no sessions and carries its fixed costs", () => {
  const closed = { from: "2026-09-01", until: "2026-12-31", why: "floor resealed" };
  const year = value(
    classYear(asClass({ ...tuesdays, year: { ...tuesdays.year, closures: [closed] } }), asHire(terms), GBP),
  );
  expect([year.dates.length, year.lost.length, pounds(year.leaves)]).toEqual([0, 8, "-42.00"]);
});

test("CLASS-7 a class and its hall make an evening document that answers for its date", () => {
  // 20 October: 2 h × 15.00 + 2 h × 1.50 = 33.00, with travel 36.40; 64.00 − 36.40 = 27.60
  // 42.00 ÷ 7 sessions = 6.00; (27.60 − 6.00) ÷ (125 + 25) min × 60 = 8.64
  const document = value(eveningOf(asClass(tuesdays), hall, "GBP", "2026-10-20"));
  expect(eveningJson(value(evening(document)))).toMatchObject({
    chargedMinutes: 120,
    hire: "33.00",
    cost: "36.40",
    contribution: "27.60",
    trueHourly: "8.64",
  });
});

test("CLASS-8 a hall without terms, or in another currency, is said and not guessed", () => {
  const { hire: _, ...bare } = hall;
  expect(problemsOf(eveningOf(asClass(tuesdays), bare, "GBP", "2026-10-20"))).toEqual([
    "hire-missing at hire",
  ]);
  expect(problemsOf(eveningOf(asClass(tuesdays), hall, "USD", "2026-10-20"))).toEqual([
    "currency-differs at currency",
  ]);
});

test.each(["GBP", "USD"])("CLASS-5 in %s the months of any year add to the year", (code) => {
  const span = fc.record({ skip: fc.integer({ min: 0, max: 300 }), weeks: fc.integer({ min: 0, max: 60 }) });
  fc.assert(
    fc.property(
      span,
      fc.integer({ min: 1, max: 7 }),
      fc.integer({ min: 0, max: 30 }),
      (days, weekday, heads) => {
        const first = Temporal.PlainDate.from("2026-09-01").add({ days: days.skip });
        const from = first.toString();
        const until = first.add({ weeks: days.weeks }).toString();
        const year: ClassYear = value(
          classYear(
            asClass({ ...tuesdays, weekday, heads, year: { ...tuesdays.year, from, until } }),
            asHire({ ...terms, weekendFactor: 1.25 }),
            currency(code),
          ),
        );
        const months = year.months.reduce((sum, { contribution }) => sum.add(contribution), new Fraction(0));
        expect(months.equals(year.contribution)).toBe(true);
        expect(year.months.reduce((sum, { sessions }) => sum + sessions, 0)).toBe(year.dates.length);
        expect(year.leaves.add(year.fixed).equals(year.contribution)).toBe(true);
      },
    ),
    { numRuns: 40 },
  );
});
