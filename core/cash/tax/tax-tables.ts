import { Temporal } from "temporal-polyfill";
import { readTaxTable } from "./read-tax-table.ts";
import scotland2025 from "./tables/scotland-2025.json" with { type: "json" };
import scotland2026 from "./tables/scotland-2026.json" with { type: "json" };
import uk2025 from "./tables/uk-2025.json" with { type: "json" };
import uk2026 from "./tables/uk-2026.json" with { type: "json" };
import us2025 from "./tables/us-2025.json" with { type: "json" };
import us2026 from "./tables/us-2026.json" with { type: "json" };
import { type TaxTableDocument, taxTableSchema } from "./tax-table-document.ts";
import type { TaxTable } from "./tax-types.ts";

const files = [uk2025, uk2026, scotland2025, scotland2026, us2025, us2026];

/** The rates that come with it, as documents to start one's own from. Throws on a file that is unsound. */
export function taxTableDocuments(): readonly TaxTableDocument[] {
  return files.map((file) => taxTableSchema.parse(file));
}

/** The same as sound values. */
export function builtInTables(): readonly TaxTable[] {
  return taxTableDocuments().map((document) => {
    const read = readTaxTable(document, document.id);
    if (!read.ok) throw new RangeError(`a table is unsound: ${JSON.stringify(read.problems)}`);
    return read.value;
  });
}

export type TaxYearSpan = { readonly from: Temporal.PlainDate; readonly until: Temporal.PlainDate };
export type ChosenTable = {
  readonly table: TaxTable;
  /** false where the year has no table and the nearest stands in */
  readonly own: boolean;
};

/** The table in which the tax year begins; where there is none the nearest, marked. `tables` is not empty. */
export function tableFor(tables: readonly TaxTable[], year: TaxYearSpan): ChosenTable {
  const far = (table: TaxTable) => Math.abs(table.from.until(year.from, { largestUnit: "days" }).days);
  const [first] = tables;
  if (first === undefined) throw new RangeError("no tables");
  const nearest = tables.reduce((best, table) => (far(table) < far(best) ? table : best), first);
  return { table: nearest, own: far(nearest) < 300 };
}

/** The tax year of these rules in which a day lies: from 6 April, or the calendar year. */
export function taxYearOf(rules: TaxTable["rules"], date: Temporal.PlainDate): TaxYearSpan {
  const [month, day] = rules === "uk" ? [4, 6] : [1, 1];
  const start = Temporal.PlainDate.from({ year: date.year, month, day });
  const from = Temporal.PlainDate.compare(start, date) <= 0 ? start : start.subtract({ years: 1 });
  return { from, until: from.add({ years: 1 }).subtract({ days: 1 }) };
}
