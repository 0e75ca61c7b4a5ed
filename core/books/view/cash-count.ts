import type { Writer } from "#core/words";

/** A box that began with 20.00, took 45.00 and paid out 6.00 should hold 59.00. */
export type CashCounted = {
  readonly float: number;
  readonly taken: number;
  readonly paidOut: number;
  /** what is really in it */
  readonly counted: number;
  readonly currency: string;
};

export type CashCount = {
  readonly expected: number;
  /** counted less expected: below nought something is missing */
  readonly difference: number;
  readonly sentence: string;
};

/** Whether the box holds what it should; a difference is said, never smoothed away. */
export function cashCount(
  { float, taken, paidOut, counted, currency }: CashCounted,
  writer: Writer,
): CashCount {
  const expected = float + taken - paidOut;
  const difference = counted - expected;
  const say = (amount: number) => writer.money(amount, currency);
  const sum = `float ${say(float)} + taken ${say(taken)} − paid out ${say(paidOut)} = ${say(expected)}`;
  return { expected, difference, sentence: sentenceOf(difference, say, sum) };
}

function sentenceOf(difference: number, say: (amount: number) => string, sum: string): string {
  if (difference === 0) return `The box holds what it should: ${sum}.`;
  return difference > 0
    ? `The box holds ${say(difference)} more than it should: ${sum}. Perhaps something was taken and not written down.`
    : `The box holds ${say(-difference)} less than it should: ${sum}. Perhaps change was given or something paid and not written down.`;
}
