import { type OwedView, owedView, type YearEnd, yearEnd } from "#core/books";
import { taxTableDocuments } from "#core/cash";
import { isCurrency, readMoney, type WorkingLine } from "#core/words";
import { signed } from "./books-cash.ts";
import type { BooksInput } from "./books-input.ts";
import { balancesAfter } from "./books-owed.ts";
import { costWords, headingWords } from "./books-words.ts";
import { dateWords } from "./date-words.ts";

/** A tax year by what was really received and paid, and what stands beside it for memory. */
export type BooksYearEnd = {
  readonly says: string;
  readonly working: readonly WorkingLine[];
  /** what a cash basis does not count */
  readonly memory: readonly WorkingLine[];
  /** the result by the costs beside that by the trading allowance; null where no table of rates has one */
  readonly beside: { readonly lines: readonly WorkingLine[]; readonly note: string } | null;
  readonly cautions: readonly string[];
  /** for the rows of a file */
  readonly year: YearEnd;
  readonly atTheEnd: OwedView;
};

export function booksYearEnd(input: BooksInput): BooksYearEnd {
  const { from, until, currency, lines, locale, writer } = input;
  const year = yearEnd(lines, { from, until, currency });
  const atTheEnd = owedView(balancesAfter(input), currency);
  const say = (amount: number) => signed(amount, (it) => writer.money(it, currency));
  const stretch = `${dateWords(from, locale)} until ${dateWords(until, locale)}`;
  return {
    says: `From ${stretch} ${movedWords(year, say)}: ${say(year.left)} is left.`,
    working: workingOf(year, input, say),
    memory: [
      { label: "owed in classes and places paid ahead", sum: "", amount: say(atTheEnd.owedTotal) },
      { label: "unpaid to you", sum: "", amount: say(atTheEnd.unpaidTotal) },
      { label: "what you have yet to pay", sum: "", amount: say(atTheEnd.dueTotal) },
      { label: "your own money put in less taken out", sum: "", amount: say(year.own) },
    ],
    beside: besideOf(year, input, say),
    cautions: [
      "This counts money when it was received and paid. Whether that is the way for you, what counts as a cost, and what tax follows is for the tax authority and an accountant to say.",
      "Keep the receipts and invoices behind these figures for as long as the tax authority asks.",
    ],
    year,
    atTheEnd,
  };
}

type Say = (amount: number) => string;

/** "£30.00 was received, £27.00 was paid and £2.50 was missing from the cash box" */
function movedWords({ incomeTotal, costsTotal, cashDifferences }: YearEnd, say: Say): string {
  const [received, paid] = [`${say(incomeTotal)} was received`, `${say(costsTotal)} was paid`];
  if (cashDifferences === 0) return `${received} and ${paid}`;
  const found = say(Math.abs(cashDifferences));
  const box = cashDifferences > 0 ? "was found in" : "was missing from";
  return `${received}, ${paid} and ${found} ${box} the cash box`;
}

function workingOf(year: YearEnd, { locale }: BooksInput, say: Say): readonly WorkingLine[] {
  const difference: readonly WorkingLine[] =
    year.cashDifferences === 0
      ? []
      : [
          {
            label: "more or less in the cash box than written down",
            sum: "",
            amount: say(year.cashDifferences),
          },
        ];
  return [
    ...year.income.map((it) => ({
      label: `received for ${headingWords(it.heading)}`,
      sum: "",
      amount: say(it.amount),
    })),
    { label: "received", sum: "", amount: say(year.incomeTotal), total: true },
    ...year.costs.map((it) => ({
      label: `paid for ${costWords(it.heading, locale)}`,
      sum: "",
      amount: say(it.amount),
    })),
    { label: "paid", sum: "", amount: say(year.costsTotal), total: true },
    ...difference,
    {
      label: "left",
      sum:
        difference.length === 0
          ? "received less paid"
          : "received less paid, with what the cash box held more or less",
      amount: say(year.left),
      total: true,
    },
  ];
}

/** A trading allowance is taken in place of all costs, never beyond what was received. */
function besideOf(year: YearEnd, { locale }: BooksInput, say: Say): BooksYearEnd["beside"] {
  const table = taxTableDocuments().find(
    (it) =>
      it.rules === "uk" && it.currency === year.currency && it.from <= year.from && year.from <= it.until,
  );
  if (table?.rules !== "uk" || !isCurrency(year.currency)) return null;
  const allowance = readMoney(table.tradingAllowance, year.currency, "");
  if (!allowance.ok) throw new RangeError(`a trading allowance that cannot be read: ${table.id}`);
  const off = Math.min(allowance.value, Math.max(0, year.incomeTotal));
  const received = say(year.incomeTotal);
  return {
    lines: [
      {
        label: "result by the costs",
        sum: `${received} − ${say(year.costsTotal)}`,
        amount: say(year.incomeTotal - year.costsTotal),
      },
      {
        label: "result by the trading allowance",
        sum: `${received} − ${say(off)} in place of all costs`,
        amount: say(year.incomeTotal - off),
      },
    ],
    note: `The trading allowance is ${say(allowance.value)} by the table of rates from ${dateWords(table.from, locale)}. It is one for all your trading together, and it is taken in place of the costs, never beside them: the tax authority and an accountant say which is open to you.`,
  };
}
