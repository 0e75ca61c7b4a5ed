import { type TaxTableDocument, taxTableDocuments } from "#core/cash";
import { Show } from "../parts/show.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import type { Tax } from "./plan-edit.ts";
import { RateTableFields } from "./rate-table-fields.tsx";

type Props = { readonly tax: Tax; readonly put: (part: Partial<Tax>) => void };

/** The rates, each table with a way to change it; one that is changed is kept with the plan. */
export function RateFields({ tax, put }: Props) {
  const { tables, place } = tax;
  const own = new Set(tables.map(({ id }) => id));
  const offered = taxTableDocuments().filter((it) => it.place === place && !own.has(it.id));
  const latest = [...offered, ...tables.filter((it) => it.place === place)].sort((one, other) =>
    one.from < other.from ? 1 : -1,
  )[0];
  const putTable = (at: number, table: TaxTableDocument) =>
    put({ tables: tables.map((it, index) => (index === at ? table : it)) });
  return (
    <Show summary="Change the rates">
      {tables.map((table, at) => (
        <div key={table.id} className="rows-one">
          <RowProblem path={`tax.tables[${at}]`} />
          <RowProblem path={`tax.tables[${at}].until`} />
          <RowProblem path={`tax.tables[${at}].bands`} />
          <RateTableFields
            table={table}
            path={`tax.tables[${at}]`}
            put={(changed) => putTable(at, changed)}
          />
          <button
            type="button"
            className="link-button small"
            onClick={() => put({ tables: tables.filter((_, index) => index !== at) })}
          >
            Take away your rates of {table.from.slice(0, 4)}
          </button>
        </div>
      ))}
      {offered.map((table) => (
        <p key={table.id}>
          <button
            type="button"
            className="link-button"
            onClick={() => put({ tables: [...tables, mine(table)] })}
          >
            Change the rates of {table.name}
          </button>
        </p>
      ))}
      {latest === undefined ? null : (
        <p>
          <button
            type="button"
            className="link-button"
            onClick={() => put({ tables: [...tables, nextYear(latest)] })}
          >
            Add the rates of the tax year after {latest.name}
          </button>
        </p>
      )}
    </Show>
  );
}

function mine(table: TaxTableDocument): TaxTableDocument {
  return {
    ...table,
    sources: [{ title: "Your own figures", mark: "own", note: `begun from ${table.name}` }],
  };
}

/** The same rates a year later, to be put right. */
function nextYear(table: TaxTableDocument): TaxTableDocument {
  const from = yearLater(table.from);
  return {
    ...mine(table),
    id: `${table.place}-${from.slice(0, 4)}`,
    name: `Your rates from ${from}`,
    from,
    until: yearLater(table.until),
  };
}

function yearLater(date: string): string {
  return `${Number(date.slice(0, 4)) + 1}${date.slice(4)}`;
}
