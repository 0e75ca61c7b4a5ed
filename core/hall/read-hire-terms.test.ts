import { type CurrencyCode, isCurrency } from "#core/words";
import { expect, test } from "vitest";
import { type HireTermsDocument, hireTermsSchema } from "./hire-terms-document.ts";
import { readHireTerms } from "./read-hire-terms.ts";

function currency(code: string): CurrencyCode {
  if (!isCurrency(code)) throw new Error(code);
  return code;
}

const GBP = currency("GBP");
const plain: HireTermsDocument = hireTermsSchema.parse({ perHour: "14.00" });

function problemsOf(change: Partial<HireTermsDocument>, place = "hire"): readonly string[] {
  const read = readHireTerms({ ...plain, ...change }, GBP, place);
  return read.ok ? [] : read.problems.map(({ code, place: at }) => `${code} at ${at}`);
}

test("HIRE-1 a hall charges by the hour or by the session, not both and not neither", () => {
  const { perHour: _, ...neither } = plain;
  const read = readHireTerms(neither, GBP, "hire");
  expect(read).toMatchObject({ ok: false, problems: [{ code: "hire-price-missing", place: "hire" }] });
  expect(problemsOf({ perSession: "30.00" })).toEqual(["hire-price-both at hire"]);
  expect(problemsOf({ rates: [{ from: "2027-01-01" }] })).toEqual(["hire-price-missing at hire.rates[0]"]);
});

test("HIRE-11 every unsound term is told at once, at its place", () => {
  expect(
    problemsOf({
      perHour: "-14.00",
      minimumMinutes: 2000,
      incrementMinutes: 0,
      freeBeforeMinutes: 7.5,
      freeAfterMinutes: -1,
      heating: { perHour: "1.505", months: [0, 12, 13, 1.5] },
      setUpFactor: -0.5,
      weekendFactor: 15,
      bands: [{ fromHoursPerYear: -1, factor: Number.NaN }],
      hoursPerYear: 9000,
      rates: [{ from: "2027-02-30", perHour: "ten" }],
    }),
  ).toEqual([
    "money-negative at hire.perHour",
    "minutes-out-of-range at hire.minimumMinutes",
    "minutes-out-of-range at hire.incrementMinutes",
    "minutes-not-whole at hire.freeBeforeMinutes",
    "minutes-out-of-range at hire.freeAfterMinutes",
    "money-too-fine at hire.heating.perHour",
    "hire-heating-month at hire.heating.months[0]",
    "hire-heating-month at hire.heating.months[2]",
    "hire-heating-month at hire.heating.months[3]",
    "hire-factor-absurd at hire.setUpFactor",
    "hire-factor-absurd at hire.weekendFactor",
    "hire-hours-absurd at hire.bands[0].fromHoursPerYear",
    "hire-factor-absurd at hire.bands[0].factor",
    "hire-hours-absurd at hire.hoursPerYear",
    "date-unreadable at hire.rates[0].from",
    "money-unreadable at hire.rates[0].perHour",
  ]);
});

test("HIRE-11 a band or a rate that is there twice is told", () => {
  const band = { fromHoursPerYear: 50, factor: 0.7 };
  expect(problemsOf({ bands: [band, { fromHoursPerYear: 90, factor: 0.5 }, band] })).toEqual([
    "hire-band-twice at hire.bands[2].fromHoursPerYear",
  ]);
  const rate = { from: "2027-01-01", perHour: "15.00" };
  expect(problemsOf({ rates: [rate, { ...rate, perHour: "16.00" }] })).toEqual([
    "hire-rate-twice at hire.rates[1].from",
  ]);
});

test("HIRE-11 an amount that would overflow the sums is a problem and not a crash", () => {
  expect(problemsOf({ perHour: "999999999999.99" })).toEqual(["money-absurd at hire.perHour"]);
});

test("HIRE-11 terms that are the whole document have places without a prefix", () => {
  expect(problemsOf({ incrementMinutes: 0, perHour: "" }, "")).toEqual([
    "money-unreadable at perHour",
    "minutes-out-of-range at incrementMinutes",
  ]);
});

test("HIRE-4 HIRE-6 rates and bands may be written in any order", () => {
  const read = readHireTerms(
    {
      ...plain,
      bands: [
        { fromHoursPerYear: 125, factor: 0.5 },
        { fromHoursPerYear: 50, factor: 0.7 },
      ],
      rates: [
        { from: "2027-09-01", perHour: "16.00" },
        { from: "2027-01-01", perHour: "15.00" },
      ],
    },
    GBP,
    "hire",
  );
  if (!read.ok) throw new Error("sound terms were refused");
  expect(read.value.bands.map(({ fromHours }) => fromHours.valueOf())).toEqual([50, 125]);
  expect(read.value.rates.map(({ from }) => from.toString())).toEqual(["2027-01-01", "2027-09-01"]);
});
