import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type PassUse, passUseBy, shareLosingClasses } from "./pass-use-by.ts";

function weeks(classes: number, attendance: number, confidence?: number): number | readonly string[] {
  const found = passUseBy({ classes, attendance, confidence });
  return found.ok
    ? found.value.teachingWeeks
    : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-20 two classes at a half need 5 weeks for four holders of five", () => {
  // fewer than 2 of 4: (1 + 4) ÷ 16 = 0.3125; of 5: (1 + 5) ÷ 32 = 0.1875
  expect(weeks(2, 0.5, 0.8)).toBe(5);
  expect(weeks(2, 0.5, 0.6875)).toBe(4);
});

test("PRICE-20 a chance that falls exactly on the line is enough", () => {
  // one class at 0.85 is used in its first week by 0.85 of the holders, the very confidence
  expect(weeks(1, 0.85)).toBe(1);
  // 1 − 0.3 = 0.7, where the double 0.7 and the sum may differ in the last digit
  expect(weeks(1, 0.7, 0.7)).toBe(1);
  // 1 − 0.9³ = 0.271
  expect(weeks(1, 0.1, 0.271)).toBe(3);
  // a hair above the line is not
  expect(weeks(1, 0.1, 0.2710000000001)).toBe(4);
});

test("PRICE-21 who loses classes is counted out: 2 classes, 3 weeks, one class of two", () => {
  // X of 3 at a half: 0 and 1 with 1/8 and 3/8; lost 2 × 1/8 + 1 × 3/8 = 0.625
  expect(shareLosingClasses(2, 0.5, 3)).toBeCloseTo(0.5, 14);
  const found = passUseBy({ classes: 2, attendance: 0.5, confidence: 0.5 });
  if (!found.ok) throw new Error("not ok");
  expect(found.value).toMatchObject({ teachingWeeks: 3, confidence: 0.5 });
  expect(found.value.shareLosingClasses).toBeCloseTo(0.5, 14);
  expect(found.value.expectedClassesLost).toBeCloseTo(0.625, 14);
});

test("PRICE-20 PRICE-21 one week fewer is never enough, and the table shows it", () => {
  const classes = fc.integer({ min: 1, max: 30 });
  const share = fc.integer({ min: 5, max: 95 }).map((hundredths) => hundredths / 100);
  fc.assert(
    fc.property(classes, share, share, (k, attendance, confidence) => {
      const found = passUseBy({ classes: k, attendance, confidence });
      if (!found.ok) {
        expect(found.problems.map(({ code }) => code)).toEqual(["pass-too-slow"]);
        return;
      }
      const { teachingWeeks } = found.value;
      const used = (count: number) => 1 - shareLosingClasses(k, attendance, count);
      expect(used(teachingWeeks)).toBeGreaterThanOrEqual(confidence - 1e-9);
      if (teachingWeeks > k) expect(used(teachingWeeks - 1)).toBeLessThan(confidence + 1e-9);
      const here = found.value.table.find((line) => line.teachingWeeks === teachingWeeks);
      expect(here?.shareLosingClasses).toBe(found.value.shareLosingClasses);
    }),
  );
});

test("PRICE-24 holders who never come, or never miss, and sizes that are none are told at their places", () => {
  expect(weeks(5, 0)).toEqual(["attendance-out-of-range at attendance"]);
  expect(weeks(5, 1)).toEqual(["attendance-out-of-range at attendance"]);
  expect(weeks(5, -0.2)).toEqual(["attendance-out-of-range at attendance"]);
  expect(weeks(5, Number.NaN)).toEqual(["attendance-out-of-range at attendance"]);
  expect(weeks(2.5, 0.5, 1)).toEqual(["pass-size at classes", "confidence-out-of-range at confidence"]);
  expect(weeks(0, 0.5, 0)).toEqual(["pass-size at classes", "confidence-out-of-range at confidence"]);
});

test("PRICE-24 a percentage is understood for what it is", () => {
  const use: PassUse = { classes: 5, attendance: 75 };
  const found = passUseBy(use);
  expect(found.ok ? "" : found.problems[0]?.next).toBe("Give a share between 0 and 1: 0.75 for 75 %.");
});

test("PRICE-24 a pass that ten years do not use up is told", () => {
  // 50 classes at one of twenty: 1,000 weeks on average
  expect(weeks(50, 0.05)).toEqual(["pass-too-slow at classes"]);
  expect(weeks(600, 0.9)).toEqual(["pass-too-slow at classes"]);
});
