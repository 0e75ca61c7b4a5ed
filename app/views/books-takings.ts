import { cashBox, type CashBox, takingsOf } from "#core/books";
import { signed } from "./books-cash.ts";
import type { BooksInput } from "./books-input.ts";
import { meansWords } from "./books-words.ts";

/** A day's takings by means, and what the box should hold. */
export type BooksTakings = {
  readonly says: string;
  readonly rows: readonly TakingsLine[];
  readonly box: CashBox;
};

export type TakingsLine = {
  readonly where: string;
  readonly taken: string;
  readonly givenBack: string;
  readonly paidOut: string;
  /** put in less taken away: her own money, takings brought to the bank, what a count found */
  readonly moved: string;
};

type Day = Pick<BooksInput, "lines" | "before" | "currency" | "writer">;

/** `lines` are those of the day, `before` what lay in the accounts when it began. */
export function booksTakings({ lines, before, currency, writer }: Day, date: string): BooksTakings {
  const found = takingsOf(lines, date, currency);
  const say = (amount: number) => writer.money(amount, currency);
  const opening = before.map((it) => ({ date: "", action: "before", ...it }));
  return {
    says:
      found.means.length === 0
        ? `No money moved on ${writer.day(date)}.`
        : `${say(found.total)} was taken on ${writer.day(date)}, less what was given back.`,
    rows: found.means.map((row) => ({
      where: meansWords(row.means),
      taken: say(row.taken),
      givenBack: say(row.givenBack),
      paidOut: say(row.paidOut),
      moved: signed(row.moved, say),
    })),
    box: cashBox([...opening, ...lines], date, currency),
  };
}
