import { type EarnedMonth, type EarnedRow, earnedView } from "#core/books";
import type { WorkingLine } from "#core/words";
import { signed } from "./books-cash.ts";
import { bookedEntries, entryPerson, entryWords } from "./books-entries.ts";
import type { BooksInput } from "./books-input.ts";
import { costWords, headingWords } from "./books-words.ts";
import { monthWords } from "./date-words.ts";

/** A month of the earned view: income when it was taught and costs when they arose. */
export type EarnedMonthRow = {
  readonly month: string;
  /** "November 2026: £377.00 earned, £216.00 of costs, £161.00 left." */
  readonly says: string;
  readonly working: readonly WorkingLine[];
};

export type EarnedLine = {
  readonly date: string;
  readonly what: string;
  readonly person: string | null;
  readonly amount: string;
};

/** The months in which something was earned or arose, the last first. */
export function booksEarned(input: BooksInput): readonly EarnedMonthRow[] {
  return earnedView(input.lines, input.currency)
    .months.toReversed()
    .map((it) => monthOf(it, input));
}

/** What was earned in a month and what it cost, in minor units. */
export function earnedSums({ income, costs }: Pick<EarnedMonth, "income" | "costs">) {
  return { income: sumOf(income), costs: sumOf(costs) };
}

function sumOf(rows: readonly { readonly amount: number }[]): number {
  return rows.reduce((total, { amount }) => total + amount, 0);
}

function monthOf(found: EarnedMonth, { currency, locale, writer }: BooksInput): EarnedMonthRow {
  const say = (amount: number) => signed(amount, (it) => writer.money(it, currency));
  const sums = earnedSums(found);
  return {
    month: found.month,
    says: `${monthWords(found.month)}: ${say(sums.income)} earned, ${say(sums.costs)} of costs, ${say(found.left)} left.`,
    working: [
      ...found.income.map((row) => ({ label: partWords(row), sum: "", amount: say(row.amount) })),
      ...found.costs.map(({ heading, amount }) => ({
        label: `cost of ${costWords(heading, locale)}`,
        sum: "",
        amount: say(-amount),
      })),
      { label: "left", sum: "", amount: say(found.left), total: true },
    ],
  };
}

function partWords({ part, heading }: EarnedRow): string {
  const what = headingWords(heading);
  switch (part) {
    case "earned":
      return `${what}, taught`;
    case "expired":
      return `${what}, run out unused`;
    case "kept":
      return `${what}, kept by the written rule`;
    case "goodwill":
      return `${what}, given beyond what was left`;
  }
}

/** Everything earned and every cost of a month, in the order of the days. */
export function earnedLines(input: BooksInput, month: string): readonly EarnedLine[] {
  const { currency, writer } = input;
  const lines = input.lines.filter(({ date }) => date.startsWith(month));
  return bookedEntries(lines, currency).flatMap((entry) =>
    entry.lines.flatMap(({ side, amount }) => {
      const income = side.side === "income" && side.part !== "owed" && side.part !== "unpaid";
      if (!income && !(side.side === "cost" && side.part === "cost")) return [];
      return [
        {
          date: entry.date,
          what: entryWords(entry, input),
          person: entryPerson(entry, input),
          amount: signed(-amount, (it) => writer.money(it, currency)),
        },
      ];
    }),
  );
}
