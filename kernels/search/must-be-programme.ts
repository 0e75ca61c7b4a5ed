import type { Column, Programme, Row } from "./programme.ts";

/** Throws with the first thing that makes it no programme: the solver itself would answer "empty" or worse. */
export function mustBeProgramme({ columns, rows }: Programme): void {
  for (const [index, column] of columns.entries())
    if (!isColumn(column)) throw new RangeError(`column ${index} is none: ${JSON.stringify(column)}`);
  const seen = new Int32Array(columns.length).fill(-1);
  for (const [index, row] of rows.entries())
    if (!isRow(row, index, seen)) throw new RangeError(`row ${index} is none: ${JSON.stringify(row)}`);
}

function isColumn({ gain, least, most }: Column): boolean {
  return Number.isFinite(gain) && least < Infinity && most > -Infinity;
}

/** `seen` holds for each column the last row it stood in. */
function isRow({ least, most, columns, values }: Row, index: number, seen: Int32Array): boolean {
  if (!(least < Infinity && most > -Infinity)) return false;
  if (values !== undefined && (values.length !== columns.length || !values.every(Number.isFinite)))
    return false;
  return columns.every((column) => {
    const known = seen[column];
    seen[column] = index;
    return known !== undefined && known !== index;
  });
}
