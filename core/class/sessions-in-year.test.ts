import { branded, type CurrencyCode } from "#core/words";
import { expect, test } from "vitest";
import { sessionsInYear } from "./sessions-in-year.ts";

test("CLASS-15 the sessions that a monthly payment is for are the dates of the first twelve months", () => {
  const GBP = branded<CurrencyCode>("GBP");
  const half = { from: "2027-02-15", until: "2027-02-19", why: "half-term" };
  // ten Tuesdays from 12 January to 16 March 2027, one of them in half-term
  const year = { from: "2027-01-12", until: "2027-03-16", closures: [half], fixedPerYear: "0" };
  expect(sessionsInYear({ weekday: 2, year }, GBP)).toBe(9);
  expect(sessionsInYear({ weekday: 9, year }, GBP)).toBeNull();
  expect(sessionsInYear({ weekday: 2, year: { ...year, until: "2026-01-01" } }, GBP)).toBeNull();
  // of 105 Tuesdays from 12 January 2027 to 9 January 2029, 53 lie before 12 January 2028: the last is the 11th
  const two = { ...year, until: "2029-01-09", closures: [] };
  expect(sessionsInYear({ weekday: 2, year: two }, GBP)).toBe(53);
});
