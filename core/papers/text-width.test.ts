import { aHall, aHallSheet } from "#testing";
import { assert, constantFrom, integer, property, string } from "fast-check";
import { expect, test } from "vitest";
import { layHallSheet } from "./lay-hall-sheet.ts";
import { missingLetters } from "./missing-letters.ts";
import { brokenText, isWritable, textWidth } from "./text-width.ts";

test("PAPER-16: a text is as wide as its letters", () => {
  // i is 252, n 550 thousandths: "in" at 10 pt is 0.802 × 10 × 25.4 / 72 = 2.829 mm
  expect(textWidth("in", 10, "regular")).toBeCloseTo(2.829, 3);
  expect(textWidth("", 10, "bold")).toBe(0);
});

test("PAPER-16: a letter that the face has not takes a whole em", () => {
  // 12 pt = 12 × 25.4 / 72 = 4.233 mm
  expect([isWritable("ж"), isWritable("ł"), isWritable("é")]).toEqual([false, true, true]);
  expect(textWidth("ж", 12, "regular")).toBeCloseTo(4.233, 3);
});

test("PAPER-16: no broken line is wider than it may be, and no letter is lost", () => {
  const words = string({ unit: constantFrom(...Array.from("abcdei .,0123456789mWł")), maxLength: 200 });
  assert(
    property(words, integer({ min: 5, max: 120 }), (text, width) => {
      const lines = brokenText(text, width, 9, "regular");
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) expect(textWidth(line, 9, "regular")).toBeLessThanOrEqual(width);
      expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
    }),
  );
});

test("PAPER-16: the letters that the face has not are told, each once", () => {
  const paper = layHallSheet(aHallSheet(aHall({ name: "Зал, зал 4 Łąka" })), "a4");
  expect(missingLetters(paper)).toEqual(["З", "а", "л", "з"]);
  expect(missingLetters(layHallSheet(aHallSheet(aHall()), "a4"))).toEqual([]);
});
