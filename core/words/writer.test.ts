import { expect, test } from "vitest";
import { plainWriter } from "./writer.ts";

test("a day, a time and an amount are written as each country reads them", () => {
  const [uk, us] = [plainWriter("en-GB"), plainWriter("en-US")];
  // 29 February 2028 is a Tuesday, 1 March 2026 a Sunday
  expect([uk.day("2028-02-29"), us.day("2026-03-01")]).toEqual([
    "Tuesday 29 February 2028",
    "Sunday, March 1, 2026",
  ]);
  expect([uk.time("18:30"), us.time("18:30"), us.time("00:05"), us.time("12:00")]).toEqual([
    "18:30",
    "6:30 pm",
    "12:05 am",
    "12:00 pm",
  ]);
  expect([uk.money(900, "GBP"), us.money(-5, "USD"), uk.money(1250, "JPY")]).toEqual([
    "9.00 GBP",
    "-0.05 USD",
    "1250 JPY",
  ]);
});

test("a term is written as each country calls it", () => {
  expect(
    ["en-GB", "en-US"].map((it) => plainWriter(it === "en-US" ? it : "en-GB").word("waiting list")),
  ).toEqual(["waiting list", "waitlist"]);
});

test("what is not a date or not a currency throws", () => {
  expect(() => plainWriter("en-GB").day("2027-02-29")).toThrow("not a date: 2027-02-29");
  expect(() => plainWriter("en-GB").money(1, "XYZ")).toThrow("not a currency: XYZ");
});
