import { expect, test } from "vitest";
import { decimalSignOf, readAnyNumber } from "./read-any-number.ts";

test.each([
  ["12.50", 12.5],
  ["1,234.50", 1234.5],
  ["£12", 12],
  ["12.50 GBP", 12.5],
  ["USD 12.50", 12.5],
  ["-4.00", -4],
  ["−4", -4],
  ["(4.00)", -4],
  ["1 234.5", 1234.5],
  ["1'234", 1234],
  ["12.", 12],
])("TABLE-6: “%s” with a decimal point is %f", (text, value) => {
  expect(readAnyNumber(text, ".")).toBe(value);
});

test.each([
  ["12,50", 12.5],
  ["1.234,50", 1234.5],
  ["12,50 €", 12.5],
])("TABLE-6: “%s” with a decimal comma is %f", (text, value) => {
  expect(readAnyNumber(text, ",")).toBe(value);
});

test.each([
  "",
  "twelve",
  "12 people",
  "12/14",
  "1,2,3",
  "1.2.3",
  "12..5",
  "--4",
  "0x10",
  "1e5",
  "Infinity",
  "12 or 13",
])("TABLE-6: “%s” is no number", (text) => {
  expect(readAnyNumber(text, ".")).toBeUndefined();
});

test("TABLE-6: the column shows its decimal sign, and three digits behind a sign are thousands", () => {
  expect(decimalSignOf(["12,50", "9,00", "1.234,00"])).toBe(",");
  expect(decimalSignOf(["12.50", "1,234.00"])).toBe(".");
  expect(decimalSignOf(["1,234", "12"])).toBe(".");
  expect(readAnyNumber("1,234", ".")).toBe(1234);
});
