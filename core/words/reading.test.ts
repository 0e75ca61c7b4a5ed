import * as fc from "fast-check";
import { expect, test } from "vitest";
import { isCurrency } from "./currency.ts";
import { exactNumber, exactNumberText } from "./exact-number.ts";
import { bad, good, problem, type Result } from "./problem.ts";
import { readAmount } from "./read-amount.ts";
import { readDate } from "./read-date.ts";
import { readMinutes } from "./read-number.ts";
import { together, togetherInOrder } from "./together.ts";

const codeOf = (result: Result<unknown>): string =>
  result.ok ? "read" : result.problems.map((it) => it.code).join();

test("a number is exact as it was written, with and without an exponent", () => {
  expect([0.1, 0.7, 1e-7, 2.5e21, -3].map((value) => exactNumber(value).toFraction())).toEqual([
    "1/10",
    "7/10",
    "1/10000000",
    "2500000000000000000000",
    "-3",
  ]);
  expect(() => exactNumber(Number.NaN)).toThrow("NaN");
});

test("any decimal of fifteen figures is exactly the decimal that was written", () => {
  const whole = fc.integer({ min: -99_999_999, max: 99_999_999 });
  fc.assert(
    fc.property(whole, fc.integer({ min: 0, max: 9_999_999 }), (units, millionths) => {
      const text = `${units}.${String(millionths).padStart(7, "0")}`;
      expect(exactNumber(Number(text)).equals(text)).toBe(true);
    }),
  );
});

test("an exact number is written with four decimals at most and no trailing noughts", () => {
  expect(
    [exactNumber(1.5), exactNumber(2), exactNumber(1).div(3), exactNumber(2).div(3)].map(exactNumberText),
  ).toEqual(["1.5", "2", "0.3333", "0.6667"]);
});

function amountRead(text: string, code: string): string {
  if (!isCurrency(code)) throw new Error(code);
  return codeOf(readAmount(text, code, "price"));
}

test("an amount is not below nought, not beyond reason and not finer than its coins", () => {
  expect(
    ["12.50", "0", "-0.01", "1000000000", "1000000000.01", "12,50", ""].map((text) =>
      amountRead(text, "GBP"),
    ),
  ).toEqual([
    "read",
    "read",
    "money-negative",
    "read",
    "money-absurd",
    "money-unreadable",
    "money-unreadable",
  ]);
  expect([amountRead("12.5", "JPY"), amountRead("12.505", "KWD")]).toEqual(["money-too-fine", "read"]);
});

test("an amount with a sign or letters is told that all amounts are in one currency", () => {
  const code = "GBP";
  if (!isCurrency(code)) throw new Error(code);
  const nexts = ["$9.00", "9.00 USD", "nine", "12,50"].map((text) => {
    const read = readAmount(text, code, "prices.single");
    return read.ok ? "" : read.problems[0]?.next;
  });
  const one = "Write it like 12.50, without a sign or letters: all amounts here are in one currency.";
  expect(nexts).toEqual([one, one, "Write it like 12.50.", "Write it like 12.50."]);
});

test("minutes are whole, from nought to a day unless said otherwise", () => {
  const read = [0, 1440, 1441, -1, 7.5, Number.NaN, Number.POSITIVE_INFINITY].map((value) =>
    codeOf(readMinutes(value, "minutes")),
  );
  const range = "minutes-out-of-range";
  expect(read).toEqual(["read", "read", range, range, "minutes-not-whole", range, range]);
  expect(codeOf(readMinutes(0, "minutes", { least: 1, most: 60 }))).toBe(range);
});

test("a date that the month does not have is not read", () => {
  expect(["2027-02-28", "2027-02-29", "tomorrow"].map((text) => codeOf(readDate(text, "date")))).toEqual([
    "read",
    "date-unreadable",
    "date-unreadable",
  ]);
});

const wrong = (code: string): Result<number> => bad(problem(code, "", "", ""));

test("several readings are read together, or all of their problems are told in order", () => {
  expect(together({ a: good(1), b: good("two") })).toEqual(good({ a: 1, b: "two" }));
  expect(codeOf(together({ a: wrong("first"), b: good(2), c: wrong("second") }))).toBe("first,second");
  expect(togetherInOrder([good(1), good(2)])).toEqual(good([1, 2]));
  expect(codeOf(togetherInOrder([wrong("first"), good(2), wrong("second")]))).toBe("first,second");
});
