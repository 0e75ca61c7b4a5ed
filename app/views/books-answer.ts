import { earnedView, isBalanced, yearEnd } from "#core/books";
import { signed } from "./books-cash.ts";
import { earnedSums } from "./books-earned.ts";
import type { BooksInput } from "./books-input.ts";
import { booksOwed } from "./books-owed.ts";
import { dateWords, monthWords } from "./date-words.ts";

export type BooksAnswer = {
  readonly says: readonly string[];
  readonly balanced: boolean;
  /** the check line */
  readonly check: string;
};

/** What came in and was earned in the month of `today`, or the last month read, and what is owed in classes. */
export function booksAnswer(input: BooksInput, today: string): BooksAnswer {
  const { lines, before } = input;
  const balanced = isBalanced({ lines: before }) && isBalanced({ lines });
  const check = balanced
    ? `The books balance: all ${lines.length} lines of these days, and all before them, add up to nothing in money and in the classes of every pass.`
    : "The books do not balance: something was changed in the data file from outside. Keep a backup from before and compare.";
  return { says: saysOf(input, today), balanced, check };
}

function saysOf(input: BooksInput, today: string): readonly string[] {
  const { lines, from, until, writer, currency, locale } = input;
  if (lines.length === 0 && input.before.length === 0)
    return [`Nothing is in the books from ${dateWords(from, locale)} until ${dateWords(until, locale)}.`];
  const say = (amount: number) => signed(amount, (it) => writer.money(it, currency));
  const month = (today > until ? until : today < from ? from : today).slice(0, 7);
  const cash = yearEnd(lines, { from: `${month}-01`, until: `${month}-31`, currency });
  const found = earnedView(lines, currency).months.find((it) => it.month === month);
  const earned = earnedSums(found ?? { income: [], costs: [] });
  const { owedTotal, classesTotal } = booksOwed(input);
  const classes = `${classesTotal} ${classesTotal === 1 ? "class" : "classes"}`;
  const noCost = lines.every(({ account }) => !account.startsWith("cost:"));
  return [
    `In ${monthWords(month)} ${say(cash.incomeTotal)} came in for teaching and ${say(cash.costsTotal)} was paid for costs.`,
    `${say(earned.income)} was earned by what was taught, and ${say(earned.costs)} of costs arose.`,
    owedTotal === 0
      ? "You owe no classes."
      : `You owe ${classes} on passes and blocks; with places paid ahead that is ${say(owedTotal)} in hand and not yet earned.`,
    ...(noCost
      ? ["No cost is written down for these days yet, so what is left looks better than it is."]
      : []),
  ];
}
