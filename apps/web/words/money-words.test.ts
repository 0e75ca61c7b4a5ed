import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { type CurrencyCode, isCurrency } from "#core/words";
import { moneyWords } from "./money-words.ts";

const code = (text: string): CurrencyCode => {
  if (!isCurrency(text)) throw new RangeError(text);
  return text;
};

test("an amount between coins is written to the nearest coin", () => {
  // 2847.6 pence round to 2848
  expect(moneyWords(new Fraction("2847.6"), code("GBP"), "en-GB")).toBe("£28.48");
});

test("a dollar is written for its reader", () => {
  expect(moneyWords(new Fraction(120_000), code("USD"), "en-US")).toBe("$1,200.00");
  expect(moneyWords(new Fraction(120_000), code("USD"), "en-GB")).toBe("US$1,200.00");
});

test("a currency without small coins has no decimals", () => {
  expect(moneyWords(new Fraction(1250), code("JPY"), "en-GB")).toBe("JP¥1,250");
});

test("less than nothing has a minus sign before the currency", () => {
  expect(moneyWords(new Fraction(-300), code("GBP"), "en-GB")).toBe("−£3.00");
});

test("less than half a coin below nothing is nothing, without a minus", () => {
  expect(moneyWords(new Fraction("-0.4"), code("GBP"), "en-GB")).toBe("£0.00");
});
