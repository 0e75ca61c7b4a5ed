import type { Programme } from "./programme.ts";

/** What an answer breaks: which column or row, and by how much. */
export type Breach = {
  readonly kind: "column" | "row" | "whole";
  readonly index: number;
  readonly by: number;
};

/** Everything an answer breaks by more than the tolerance; shares nothing with the solver. */
export function checkAnswer(
  programme: Programme,
  columns: readonly number[],
  tolerance = 1e-6,
): readonly Breach[] {
  const breaches: Breach[] = [];
  for (const [index, column] of programme.columns.entries()) {
    const value = columns[index] ?? Number.NaN;
    note("column", index, outside(value, column.least, column.most));
    if (column.whole === true) note("whole", index, Math.abs(value - Math.round(value)));
  }
  for (const [index, row] of programme.rows.entries()) {
    const sum = row.columns.reduce(
      (held, column, term) => held + (row.values?.[term] ?? 1) * (columns[column] ?? Number.NaN),
      0,
    );
    note("row", index, outside(sum, row.least, row.most));
  }
  return breaches;

  // NaN is a breach too
  function note(kind: Breach["kind"], index: number, by: number): void {
    if (!(by <= tolerance)) breaches.push({ kind, index, by });
  }
}

function outside(value: number, least: number, most: number): number {
  return Math.max(0, least - value, value - most) + (Number.isNaN(value) ? Number.NaN : 0);
}
