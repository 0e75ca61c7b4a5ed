import type { Writer } from "#core/words";
import type { BookLine } from "./book-line.ts";
import { takingsOf } from "./takings.ts";

/** A box that began with 20.00, took 45.00, paid out 6.00 and gave 30.00 to the bank should hold 29.00. */
export type CashBox = {
  /** what was in it when the day began */
  readonly float: number;
  readonly taken: number;
  /** given back for classes and spent on costs */
  readonly paidOut: number;
  /** put in from elsewhere less taken away, like takings brought to the bank */
  readonly moved: number;
  readonly currency: string;
};

export type CashCount = {
  readonly expected: number;
  /** counted less expected: below nought something is missing */
  readonly difference: number;
  readonly sentence: string;
};

/** The box of a day by the books; `lines` are those of all days until then. */
export function cashBox(lines: readonly BookLine[], date: string, currency: string): CashBox {
  const cash = lines.filter((line) => line.account === "cash" && line.commodity === currency);
  const float = cash.reduce((sum, line) => (line.date < date ? sum + line.amount : sum), 0);
  const row = takingsOf(lines, date, currency).means.find(({ means }) => means === "cash");
  if (row === undefined) return { float, taken: 0, paidOut: 0, moved: 0, currency };
  return { float, taken: row.taken, paidOut: row.givenBack + row.paidOut, moved: row.moved, currency };
}

/** Whether the box holds what it should; a difference is said, never smoothed away. */
export function cashCount(box: CashBox, counted: number, writer: Writer): CashCount {
  const expected = box.float + box.taken - box.paidOut + box.moved;
  const difference = counted - expected;
  const say = (amount: number) => writer.money(amount, box.currency);
  return { expected, difference, sentence: sentenceOf(difference, say, sumOf(box, expected, say)) };
}

function sumOf(
  { float, taken, paidOut, moved }: CashBox,
  expected: number,
  say: (amount: number) => string,
): string {
  const across =
    moved === 0 ? "" : moved > 0 ? ` + put in ${say(moved)}` : ` − taken to another place ${say(-moved)}`;
  return `float ${say(float)} + taken ${say(taken)} − paid out ${say(paidOut)}${across} = ${say(expected)}`;
}

function sentenceOf(difference: number, say: (amount: number) => string, sum: string): string {
  if (difference === 0) return `The box holds what it should: ${sum}.`;
  return difference > 0
    ? `The box holds ${say(difference)} more than it should: ${sum}. Perhaps something was taken and not written down.`
    : `The box holds ${say(-difference)} less than it should: ${sum}. Perhaps change was given or something paid and not written down.`;
}
