import { minor } from "#core/words";
import { assert, integer, property } from "fast-check";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { levelLoss } from "../price-rise.ts";
import { targetPrice } from "../target-price.ts";
import { coursePrice, courseTerms, monthlySpread } from "./course-terms.ts";

test("PRICE-37 six sessions less 15 % are 51.00, and with four left 34.00", () => {
  // 6 × 10.00 × 0.85; 4 × 8.50
  expect(coursePrice(6, minor(1000), new Fraction(15, 100))).toBe(5100);
  const terms = courseTerms({ sessions: 6, price: minor(5100) });
  expect(terms.perSession.valueOf()).toBe(850);
  expect(terms.lateJoiner.map(({ remaining, price }) => `${remaining}: ${price}`)).toEqual([
    "6: 5100",
    "5: 4250",
    "4: 3400",
    "3: 2550",
    "2: 1700",
    "1: 850",
  ]);
});

test("PRICE-37 refunds of a course that does not divide evenly add up to its price", () => {
  // 50.00 ÷ 6 = 8.333…: 8.33, 8.34, 8.33, 8.33, 8.34, 8.33
  expect(courseTerms({ sessions: 6, price: minor(5000) }).refunds).toEqual([833, 834, 833, 833, 834, 833]);
  assert(
    property(integer({ min: 1, max: 60 }), integer({ min: 0, max: 100_000 }), (sessions, price) => {
      const { refunds } = courseTerms({ sessions, price: minor(price) });
      expect(refunds.reduce((sum, it) => sum + it, 0)).toBe(price);
      expect(Math.max(...refunds) - Math.min(...refunds)).toBeLessThanOrEqual(1);
    }),
  );
});

test("PRICE-37 a year of 40 sessions at 8.50 is 340.00, paid in twelve parts of 28.33 or 28.34", () => {
  const { year, payments } = monthlySpread(minor(850), 40);
  expect(year).toBe(34_000);
  expect(payments.reduce((sum, it) => sum + it, 0)).toBe(34_000);
  expect(payments.filter((it) => it === 2833)).toHaveLength(8);
  expect(payments.filter((it) => it === 2834)).toHaveLength(4);
});

test("courses of no sessions throw", () => {
  expect(() => courseTerms({ sessions: 0, price: minor(100) })).toThrow("sessions: 0");
});

test("PRICE-38 the price that pays 20 an hour after tax covers the evening, the hours and the head", () => {
  // C 30.00, 2 h × 15 ÷ 0.75 = 40.00; 70.00 ÷ 10 + 0.50 = 7.50
  const price = targetPrice({
    cost: 3000,
    minutes: 120,
    perHour: 1500,
    taxShare: new Fraction(1, 4),
    heads: 10,
    perHead: 50,
  });
  expect(price.valueOf()).toBe(750);
  const sum = { cost: 1, minutes: 1, perHour: 1, perHead: 0 };
  expect(() => targetPrice({ ...sum, taxShare: new Fraction(1), heads: 10 })).toThrow("tax, heads: 1, 10");
  expect(() => targetPrice({ ...sum, taxShare: new Fraction(0), heads: 0 })).toThrow("tax, heads: 0, 0");
});

test("PRICE-39 a rise of 1.00 on 9.00 with 0.20 a head is level if no more than 5/49 go", () => {
  // 1.00 ÷ (9.00 + 1.00 − 0.20) = 10.2 %
  expect(levelLoss(new Fraction(900), new Fraction(100), new Fraction(20))?.toFraction()).toBe("5/49");
  expect(levelLoss(new Fraction(10), new Fraction(5), new Fraction(20))).toBeNull();
});
