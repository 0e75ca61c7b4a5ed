import {
  bad,
  type CurrencyCode,
  good,
  type Problem,
  problem,
  readAmount,
  readExact,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { YearMoneyDocument } from "../money-document.ts";
import { readTaxTable } from "./read-tax-table.ts";
import { builtInTables } from "./tax-tables.ts";
import type { TaxQuestion, TaxTable } from "./tax-types.ts";

type TaxDocument = NonNullable<YearMoneyDocument["tax"]>;

/**
 * What is asked of the tax. Tables of her own stand before those that come with it for the same days. Problems:
 * "tax-place-unknown", "tax-currency", "tax-tables-overlap" and those of tables, amounts and rates.
 */
export function readTax(tax: TaxDocument, currency: CurrencyCode): Result<TaxQuestion> {
  const own = togetherInOrder(tax.tables.map((table, at) => readTaxTable(table, `tax.tables[${at}]`)));
  if (!own.ok) return own;
  const overlaps = overlapProblems(own.value);
  if (overlaps.length > 0) return bad(...overlaps);
  const tables = tablesOf(tax.place, own.value);
  const [first] = tables;
  if (first === undefined) return bad(placeUnknown(tax.place));
  const wrong = tables.find((table) => table.currency !== currency);
  if (wrong !== undefined) return bad(wrongCurrency(wrong, currency));
  const read = readAmounts(tax, currency);
  if (!read.ok) return read;
  const { filing, registered } = tax;
  return good({ ...read.value, tables, rules: first.rules, filing, registered });
}

function tablesOf(place: string, own: readonly TaxTable[]): readonly TaxTable[] {
  const hers = own.filter((table) => table.place === place);
  const others = builtInTables().filter(
    (table) => table.place === place && !hers.some((it) => overlap(it, table)),
  );
  const [first] = hers;
  const rules = first?.rules ?? others[0]?.rules;
  return [...hers, ...others].filter((table) => table.rules === rules);
}

function overlap(one: TaxTable, other: TaxTable): boolean {
  return (
    Temporal.PlainDate.compare(one.from, other.until) <= 0 &&
    Temporal.PlainDate.compare(other.from, one.until) <= 0
  );
}

function overlapProblems(tables: readonly TaxTable[]): readonly Problem[] {
  return tables.flatMap((table, at) => {
    const earlier = tables.slice(0, at).find((it) => it.place === table.place && overlap(it, table));
    if (earlier === undefined) return [];
    const says = `“${earlier.name.slice(0, 40)}” and “${table.name.slice(0, 40)}” hold for the same days.`;
    const next = "Give one of them other days, or leave it out.";
    return [problem("tax-tables-overlap", `tax.tables[${at}]`, says, next)];
  });
}

function placeUnknown(place: string): Problem {
  const says = `There are no tax rates for “${place.slice(0, 40)}”.`;
  const next = "Give uk, scotland or us, add a table of your own for that place, or leave tax out.";
  return problem("tax-place-unknown", "tax.place", says, next);
}

function wrongCurrency({ name, currency: has }: TaxTable, currency: CurrencyCode): Problem {
  const says = `The rates of “${name.slice(0, 60)}” are in ${has}, and the money is in ${currency}.`;
  return problem("tax-currency", "tax.place", says, "Give the place where these takings are taxed.");
}

function readAmounts(tax: TaxDocument, currency: CurrencyCode) {
  const amount = (text: string, key: string) => readAmount(text, currency, `tax.${key}`);
  const { atSource, last, pot, stateRate } = tax;
  return together({
    other: amount(tax.other, "other"),
    atSource: atSource === undefined ? good(null) : amount(atSource, "atSource"),
    stateRate: readExact(
      stateRate,
      "tax.stateRate",
      { least: 0, most: 0.5 },
      {
        code: "tax-rate-out-of-range",
        says: `A rate of ${stateRate} cannot be meant.`,
        next: "Give a share between 0 and 0.5: 0.05 is a twentieth.",
      },
    ),
    soFar: together({
      income: amount(tax.soFar.income, "soFar.income"),
      costs: amount(tax.soFar.costs, "soFar.costs"),
    }),
    paidSoFar: amount(tax.paidSoFar, "paidSoFar"),
    last:
      last === undefined
        ? good(null)
        : together({
            bill: amount(last.bill, "last.bill"),
            onAccount: amount(last.onAccount, "last.onAccount"),
          }),
    pot: pot === undefined ? good(null) : amount(pot, "pot"),
  });
}
