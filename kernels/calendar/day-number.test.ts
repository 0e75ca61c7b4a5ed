import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { dateOfDay, dayNumber, dayNumberOf, weekdayOfDay } from "./day-number.ts";

test("days are numbered as the calendar library counts them, there and back, with their weekday", () => {
  fc.assert(
    fc.property(fc.integer({ min: -200_000, max: 200_000 }), (number) => {
      const date = Temporal.PlainDate.from("1970-01-01").add({ days: number });
      expect(dayNumber(date.year, date.month, date.day)).toBe(number);
      expect(dateOfDay(number)).toBe(date.toString());
      expect(weekdayOfDay(number)).toBe(date.dayOfWeek);
    }),
  );
});

test("a day that the month does not have is none", () => {
  expect(dayNumberOf("2027-02-29")).toBeUndefined();
  expect(dayNumberOf("2028-02-29")).toBe((dayNumberOf("2028-02-28") ?? 0) + 1);
  expect(dayNumberOf("1900-02-29")).toBeUndefined();
  expect(dayNumberOf("28/02/2027")).toBeUndefined();
  expect(dayNumber(2027, 13, 1)).toBeUndefined();
  expect(dayNumber(2027, 1.5, 1)).toBeUndefined();
});
