import { assert, constantFrom, integer, property, string } from "fast-check";
import { expect, test } from "vitest";
import { formatLength, formatLengthShort, type LengthUnits, parseLength } from "./length.ts";

function read(text: string, units: LengthUnits): number | string | undefined {
  const length = parseLength(text, units);
  return length.ok ? length.value : length.problems[0]?.code;
}

test.each([
  ["7.25", 7250],
  ["7,25", 7250],
  ["7.25 m", 7250],
  ["7.25m", 7250],
  [" 7.25  metres ", 7250],
  ["725 cm", 7250],
  ["7250 mm", 7250],
  [".5", 500],
  ["7.", 7000],
  // 24 × 304.8 + 6 × 25.4 = 7315.2 + 152.4 = 7467.6
  ["24' 6\"", 7468],
  ["24 ft 6 in", 7468],
])("in metres, “%s” is %d mm", (text, millimetres) => {
  expect(read(text, "metric")).toBe(millimetres);
});

test.each([
  // 24.5 × 304.8 = 7467.6
  ["24.5", 7468],
  ["24.5 ft", 7468],
  ["24' 6\"", 7468],
  ["24′ 6″", 7468],
  ["24’6”", 7468],
  ["24' 6''", 7468],
  ["24'6", 7468],
  ["24-6", 7468],
  ["24 6", 7468],
  // 7467.6 + 12.7 = 7480.3
  ["24 ft 6 1/2 in", 7480],
  ["24 feet 6½ inches", 7480],
  ["24-6 1/2", 7480],
  // 24 × 304.8 = 7315.2
  ["24 ft", 7315],
  // 6 × 25.4 = 152.4; 1/2 × 25.4 = 12.7
  ['6"', 152],
  ["1/2 in", 13],
  // 61 / 2 = 30.5 in: not six and a half
  ["61/2 in", 775],
  ["7.25 m", 7250],
])("in feet, “%s” is %d mm", (text, millimetres) => {
  expect(read(text, "feet")).toBe(millimetres);
});

test.each([
  ["", "length-unreadable"],
  ["wide", "length-unreadable"],
  ["7.2.5", "length-unreadable"],
  ["24-6", "length-unreadable"],
  ["NaN", "length-unreadable"],
  ["1e9", "length-unreadable"],
  ["in", "length-unreadable"],
  ["6 1/0 in", "length-unreadable"],
  ["-3 m", "length-negative"],
  ["1001 m", "length-huge"],
])("in metres, “%s” is refused as %s", (text, code) => {
  expect(read(text, "metric")).toBe(code);
});

test("a refusal says how to write a length in the units in use", () => {
  const length = parseLength("wide", "feet", "walls[2]");
  expect(!length.ok && length.problems).toEqual([
    {
      code: "length-unreadable",
      place: "walls[2]",
      says: "“wide” is not a length.",
      next: "Write it like 24 ft 6 in or 24' 6\".",
    },
  ]);
});

test.each([
  [7250, "7.25 m", "7.25"],
  [7254, "7.25 m", "7.25"],
  [0, "0.00 m", "0.00"],
  [-500, "-0.50 m", "-0.50"],
])("%d mm is %s", (millimetres, text, short) => {
  expect(formatLength(millimetres, "metric")).toBe(text);
  expect(formatLengthShort(millimetres, "metric")).toBe(short);
});

test.each([
  // 7250 / 6.35 = 1141.7 → 1142 quarters = 23 × 48 + 38; 38 quarters = 9 1/2 in
  [7250, "23 ft 9 1/2 in", "23′ 9½″"],
  [7315, "24 ft 0 in", "24′ 0″"],
  // 13 / 6.35 = 2.05 → 2 quarters
  [13, "1/2 in", "½″"],
  [152, "6 in", "6″"],
  // 304 / 6.35 = 47.9 → 48 quarters: a whole foot, not 12 in
  [304, "1 ft 0 in", "1′ 0″"],
  // 311 / 6.35 = 48.98 → 49 quarters
  [311, "1 ft 1/4 in", "1′ ¼″"],
])("%d mm is %s in feet and inches", (millimetres, text, short) => {
  expect(formatLength(millimetres, "feet")).toBe(text);
  expect(formatLengthShort(millimetres, "feet")).toBe(short);
});

const lengths = integer({ min: 0, max: 200_000 });
const eitherUnits = constantFrom<LengthUnits>("metric", "feet");

test("what is written reads back as the same text, long and short", () => {
  assert(
    property(lengths, eitherUnits, (millimetres, units) => {
      for (const format of [formatLength, formatLengthShort]) {
        const text = format(millimetres, units);
        const back = parseLength(text, units);
        expect(back.ok && format(back.value, units)).toBe(text);
      }
    }),
  );
});

test("a whole centimetre comes back exactly, and any length within half of the finest mark", () => {
  assert(
    property(lengths, eitherUnits, (millimetres, units) => {
      const back = read(formatLength(millimetres, units), units);
      // half a centimetre; half of 6.35 mm and the rounding to a millimetre
      const most = units === "feet" ? 3.7 : millimetres % 10 === 0 ? 0 : 5;
      expect(Math.abs(Number(back) - millimetres)).toBeLessThanOrEqual(most);
    }),
  );
});

test("no text makes the reader throw or give a length that is not a whole number of millimetres", () => {
  assert(
    property(string(), eitherUnits, (text, units) => {
      const length = parseLength(text, units);
      expect(!length.ok || Number.isSafeInteger(length.value)).toBe(true);
    }),
  );
});
