import { expect, test } from "vitest";
import { type CurrencyCode, isCurrency } from "#core/words";
import { readTypedAmount } from "./read-typed-amount.ts";

const code = (text: string): CurrencyCode => {
  if (!isCurrency(text)) throw new RangeError(text);
  return text;
};
const read = (text: string, currency = "GBP") => {
  const answer = readTypedAmount(text, code(currency), "prices.single");
  return answer.ok ? answer.value : answer.problems[0]?.code;
};

test("an amount is kept as a plain decimal string of the currency", () => {
  expect(read("8")).toBe("8.00");
  expect(read(" £8.5 ")).toBe("8.50");
  expect(read("$12", "USD")).toBe("12.00");
  expect(read("1250", "JPY")).toBe("1250");
});

test("the letters and the sign of the currency are let pass, those of another are told", () => {
  expect(["8 GBP", "GBP 8", "8 £"].map((text) => read(text))).toEqual(["8.00", "8.00", "8.00"]);
  expect(["$8", "8 USD", "€ 8.50", "8.50€"].map((text) => read(text))).toEqual(
    Array.from({ length: 4 }, () => "currencies-mixed"),
  );
  expect(read("£8", "USD")).toBe("currencies-mixed");
  expect(read("$8", "AUD")).toBe("8.00");
});

test("nothing typed, words, and finer than a coin are problems", () => {
  expect(read("")).toBe("money-unreadable");
  expect(read("eight")).toBe("money-unreadable");
  expect(read("8.505")).toBe("money-too-fine");
  expect(read("12.50", "JPY")).toBe("money-too-fine");
});

test("an amount below nothing is a problem", () => {
  expect(read("-3")).toBe("money-negative");
});
