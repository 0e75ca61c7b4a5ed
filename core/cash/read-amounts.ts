import {
  bad,
  type CurrencyCode,
  good,
  type Minor,
  problem,
  readAmount,
  readDate,
  type Result,
  together,
} from "#core/words";
import type { Temporal } from "temporal-polyfill";
import type { YearMoneyDocument } from "./money-document.ts";
import type { PaidTerms, Spread } from "./money-types.ts";

type AmountDocument = YearMoneyDocument["moves"][number]["amount"];
type PaidDocument = YearMoneyDocument["work"][number]["paid"];

// 10 million pounds a session: a hundred works of a thousand sessions at that stay below 2^53 coins
const MOST = 1_000_000_000;

/** An amount of which many are added up. Problems: those of readAmount. */
export function readOne(text: string, currency: CurrencyCode, place: string): Result<Minor> {
  const read = readAmount(text, currency, place);
  if (!read.ok || read.value <= MOST) return read;
  const says = `${text.trim()} is too much to be meant.`;
  return bad(problem("money-absurd", place, says, "Look at the figure again."));
}

/** "80.00", or a band of which low and high may be left out. Problem: "band-order". */
export function readSpread(amount: AmountDocument, currency: CurrencyCode, place: string): Result<Spread> {
  if (typeof amount === "string") {
    const one = readOne(amount, currency, place);
    return one.ok ? good({ low: one.value, middle: one.value, high: one.value }) : one;
  }
  const { middle, low = middle, high = middle } = amount;
  const read = together({
    low: readOne(low, currency, `${place}.low`),
    middle: readOne(middle, currency, `${place}.middle`),
    high: readOne(high, currency, `${place}.high`),
  });
  if (!read.ok) return read;
  const { value } = read;
  if (value.low <= value.middle && value.middle <= value.high) return good(value);
  const says = `A band from ${low} over ${middle} to ${high} is not in order.`;
  return bad(
    problem("band-order", place, says, "Give the lowest, the middle and the highest in that order."),
  );
}

/** Problem: "lag-out-of-range". */
export function readPaid(paid: PaidDocument, otherwise: PaidTerms, place: string): Result<PaidTerms> {
  if (paid === undefined) return good(otherwise);
  const { when, days } = paid;
  if (Number.isInteger(days) && days >= 0 && days <= 366)
    return good({ when, days: when === "on-the-day" ? 0 : days });
  const says = `Money that moves ${days} days later or earlier cannot be meant.`;
  return bad(problem("lag-out-of-range", `${place}.days`, says, "Give whole days, a year at most."));
}

/** Dates in order, each once. */
export function inOrder(dates: readonly Temporal.PlainDate[]): readonly Temporal.PlainDate[] {
  const known = new Map(dates.map((date) => [date.toString(), date]));
  return [...known.entries()].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, date]) => date);
}

/** The day as a date and as it is written. */
export function readDay(text: string, place: string): Result<string> {
  const read = readDate(text, place);
  return read.ok ? good(read.value.toString()) : read;
}
