import { expect, test } from "vitest";
import { dateWords, monthName, monthWords, weekdayName, yearFrom } from "./dates.ts";

test("a date is written as its reader writes it", () => {
  expect(dateWords("2027-01-11", "en-GB")).toBe("Monday 11 January 2027");
  expect(dateWords("2027-01-11", "en-US")).toBe("Monday, January 11, 2027");
});

test("a month and its year", () => {
  expect(monthWords("2027-01", "en-GB")).toBe("January 2027");
  expect(monthName(12)).toBe("December");
});

test("the week begins with Monday", () => {
  expect([1, 2, 3, 4, 5, 6, 7].map(weekdayName)).toEqual([
    "Monday",
    "Tuesday",
    "Wednesday",
    "Thursday",
    "Friday",
    "Saturday",
    "Sunday",
  ]);
});

test("a year ends the day before it began, also over a leap day", () => {
  expect(yearFrom("2027-01-11")).toBe("2028-01-10");
  // the year from 1 March 2027 holds 29 February 2028, which is its last day
  expect(yearFrom("2027-03-01")).toBe("2028-02-29");
});

test("what is not a date is refused", () => {
  expect(() => dateWords("soon", "en-GB")).toThrow("not a date: soon");
});
