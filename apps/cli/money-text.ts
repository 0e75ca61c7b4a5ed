import type { MoneyJson } from "#core/cash";
import { answerSheet, partsOf } from "./answer-sheet.ts";
import { textTable } from "./text-table.ts";

const headings: Readonly<Record<string, string>> = {
  bank: "The bank account",
  reserve: "The reserve",
  path: "The path to full time",
};

/** The answer first, then the bank month by month, the dates of tax, and the sums behind them. */
export function moneyText(answer: MoneyJson): string {
  const { currency, sentences, working } = answer;
  const told = sentences.map((it) => `${it}\n`).join("");
  const sums = answerSheet(
    [],
    partsOf(working, (part) => headings[part] ?? part),
  );
  return `${told}
Month by month, in ${currency}
${monthTable(answer)}${taxTable(answer)}${sums}`;
}

function monthTable({ months }: MoneyJson): string {
  const withPot = months.some(({ pot }) => pot !== null);
  const heading = ["month", "in", "out", "tax", "at its end", "lowest", ...(withPot ? ["tax pot"] : [])];
  const rows = months.map((it) => [
    it.month,
    it.in,
    it.out,
    it.tax,
    it.end.middle,
    it.lowest.middle,
    ...(withPot ? [it.pot ?? "-"] : []),
  ]);
  return textTable([heading, ...rows]);
}

function taxTable({ tax, currency }: MoneyJson): string {
  if (tax === null || tax.dates.length === 0) return "";
  const rows = tax.dates.map((it) => [`${it.date} ${it.what}, for ${it.forYear}`, it.amount ?? "-"]);
  return `\nDates of tax, an estimate in ${currency}\n${textTable(rows)}`;
}
