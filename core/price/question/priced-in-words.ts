import type { ExactMinor, Problem } from "#core/words";
import { Fraction } from "fraction.js";
import { plainDecimal } from "../chance-text.ts";
import type { AmountWriter } from "../reply.ts";
import type { PriceJson } from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";
import type { PriceSums } from "./price-sums.ts";

/** All that the sentences of a price answer are made of. */
export type PricedInWords = {
  readonly question: PriceQuestion;
  readonly sums: PriceSums;
  readonly findings: readonly Problem[];
  /** sentences of what is answered only when it is asked for */
  readonly asked: readonly string[];
  readonly changes: PriceJson["changes"];
  readonly write: AmountWriter;
};

/** Writes an amount of the question’s currency, exact or a double of minor units. */
export function amounts({ question, write }: PricedInWords): (amount: ExactMinor | number) => string {
  return (amount) =>
    write(typeof amount === "number" ? new Fraction(Math.round(amount)) : amount, question.currency);
}

/** "1 person", "9.3 people". */
export function people(count: number, decimals: number): string {
  const text = plainDecimal(count, decimals);
  return text === "1" ? "1 person" : `${text} people`;
}
