import { cashView, type Means, yearEnd } from "#core/books";
import type { WorkingLine } from "#core/words";
import { type BookedEntry, bookedEntries, entryPerson, entryWords } from "./books-entries.ts";
import type { BooksInput } from "./books-input.ts";
import { costWords, headingWords, meansWords } from "./books-words.ts";
import { monthWords } from "./date-words.ts";

/** A month of the cash view: money when it moved, by heading and by where it lay; both come to the same change. */
export type CashMonth = {
  /** "2026-11" */
  readonly month: string;
  /** "November 2026: £412.00 came in, £54.00 was paid." */
  readonly says: string;
  readonly headings: readonly WorkingLine[];
  readonly places: readonly CashPlace[];
};

/** Amounts in words, `change` is in less out. */
export type CashPlace = {
  readonly where: string;
  readonly in: string;
  readonly out: string;
  readonly change: string;
};

/** One movement of money. */
export type CashLine = {
  readonly date: string;
  readonly what: string;
  readonly person: string | null;
  readonly where: string;
  readonly amount: string;
};

/** The months in which money moved, the last first. */
export function booksCash(input: BooksInput): readonly CashMonth[] {
  const { lines, currency } = input;
  const { months } = cashView(lines, currency);
  const all = [...new Set(months.map(({ when }) => when))].toReversed();
  return all.map((month) => {
    const own = lines.filter(({ date }) => date.startsWith(month));
    const rows = months.filter(({ when }) => when === month);
    return monthOf(input, month, own, rows);
  });
}

type Rows = readonly { readonly means: Means; readonly in: number; readonly out: number }[];

function monthOf(input: BooksInput, month: string, lines: BooksInput["lines"], rows: Rows): CashMonth {
  const { currency, locale, writer } = input;
  const say = (amount: number) => signed(amount, (it) => writer.money(it, currency));
  const found = yearEnd(lines, { from: `${month}-01`, until: `${month}-31`, currency });
  const change = rows.reduce((sum, row) => sum + row.in - row.out, 0);
  const line = (label: string, amount: number): readonly WorkingLine[] =>
    amount === 0 ? [] : [{ label, sum: "", amount: say(amount) }];
  const came = writer.money(found.incomeTotal, currency);
  const paid = writer.money(found.costsTotal, currency);
  return {
    month,
    says: `${monthWords(month)}: ${came} came in, ${paid} was paid.`,
    headings: [
      ...found.income.flatMap((it) => line(`came in for ${headingWords(it.heading)}`, it.amount)),
      ...found.costs.flatMap((it) => line(`paid for ${costWords(it.heading, locale)}`, -it.amount)),
      ...line("your own money put in less taken out", found.own),
      ...line("more or less in the cash box than written down", found.cashDifferences),
      { label: "change of the money in hand", sum: "", amount: say(change), total: true },
    ],
    places: rows.map(({ means, in: came, out }) => ({
      where: meansWords(means),
      in: writer.money(came, currency),
      out: writer.money(out, currency),
      change: say(came - out),
    })),
  };
}

/** Every movement of a month, in the order of the days. */
export function cashLines(input: BooksInput, month: string): readonly CashLine[] {
  const lines = input.lines.filter(({ date }) => date.startsWith(month));
  return bookedEntries(lines, input.currency).flatMap((entry) => linesOf(entry, input));
}

function linesOf(entry: BookedEntry, input: BooksInput): readonly CashLine[] {
  const { writer, currency } = input;
  return entry.lines.flatMap(({ side, amount }) =>
    side.side === "means"
      ? [
          {
            date: entry.date,
            what: `${entryWords(entry, input)}${backWords(entry, amount)}`,
            person: entryPerson(entry, input),
            where: meansWords(side.means),
            amount: signed(amount, (it) => writer.money(it, currency)),
          },
        ]
      : [],
  );
}

function backWords({ lines }: BookedEntry, amount: number): string {
  return amount < 0 && lines.some(({ side }) => side.side === "income") ? ", given back" : "";
}

/** A minus that is said: "−£27.00". */
export function signed(amount: number, say: (amount: number) => string): string {
  return amount < 0 ? `−${say(-amount)}` : say(amount);
}
