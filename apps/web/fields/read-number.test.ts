import { expect, test } from "vitest";
import { readNumber } from "./read-number.ts";

const heads = { least: 0, most: 500, whole: true };
const codeOf = (text: string, range = heads) => {
  const read = readNumber(text, range, "heads");
  return read.ok ? read.value : read.problems[0]?.code;
};

test("a number in figures is read, with spaces round it or a sign before it", () => {
  expect(codeOf(" 12 ")).toBe(12);
  expect(codeOf("+12")).toBe(12);
});

test("words, an empty box, exponents and infinity are not numbers", () => {
  for (const text of ["about nine", "", "1e3", "Infinity", "NaN", "1,000", "0x10", "."]) {
    expect(codeOf(text)).toBe("number-unreadable");
  }
});

test("part of a person is not a whole number", () => {
  expect(codeOf("9.5")).toBe("number-not-whole");
});

test("a number below the least or above the most is refused with the range", () => {
  const read = readNumber("501", heads, "heads");
  expect(read.ok ? "" : read.problems[0]?.next).toBe("Give a number from 0 to 500.");
  expect(codeOf("−1")).toBe("number-out-of-range");
});

test("minus nothing is nothing", () => {
  expect(Object.is(codeOf("-0"), 0)).toBe(true);
});
