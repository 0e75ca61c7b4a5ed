/**
 * The inverse of a symmetric positive definite matrix, by Gauss–Jordan elimination down the diagonal; undefined where
 * a pivot is next to nothing, that is where the equations leave something open. Up to some hundred rows.
 */
export function inverseOf(
  matrix: readonly (readonly number[])[],
): readonly (readonly number[])[] | undefined {
  const size = matrix.length;
  const rows = matrix.map((row, index) => [
    ...row,
    ...Array.from({ length: size }, (_, column) => (column === index ? 1 : 0)),
  ]);
  const largest = Math.max(...matrix.map((row, index) => Math.abs(row[index] ?? 0)));
  for (const [pivot, own] of rows.entries()) {
    const value = own[pivot] ?? 0;
    if (!(value > largest * 1e-14)) return undefined;
    for (let column = 0; column < 2 * size; column++) own[column] = (own[column] ?? 0) / value;
    for (const row of rows) {
      const share = row[pivot] ?? 0;
      if (row === own || share === 0) continue;
      for (let column = 0; column < 2 * size; column++)
        row[column] = (row[column] ?? 0) - share * (own[column] ?? 0);
    }
  }
  return rows.map((row) => row.slice(size));
}
