const STEP = 1e-3;

/** Second differences of a function of a few numbers at a point, each against each. */
export function curvature(
  valueAt: (at: readonly number[]) => number,
  at: readonly number[],
): readonly number[][] {
  const middle = valueAt(at);
  return at.map((_, row) =>
    at.map((_unused, column) => {
      const stepped = (by: number, and: number): number => {
        const to = [...at];
        to[row] = (to[row] ?? 0) + by;
        to[column] = (to[column] ?? 0) + and;
        return valueAt(to);
      };
      if (row === column) return (stepped(STEP, 0) - 2 * middle + stepped(-STEP, 0)) / STEP ** 2;
      const same = stepped(STEP, STEP) + stepped(-STEP, -STEP);
      return (same - stepped(STEP, -STEP) - stepped(-STEP, STEP)) / (4 * STEP ** 2);
    }),
  );
}

/** First differences, half a step to either side. */
export function slopes(valueAt: (at: readonly number[]) => number, at: readonly number[]): readonly number[] {
  return at.map((_, index) => {
    const stepped = (by: number): number =>
      valueAt(at.map((value, other) => (other === index ? value + by : value)));
    return (stepped(STEP / 10) - stepped(-STEP / 10)) / (STEP / 5);
  });
}

/** By elimination without exchange, which fails exactly where the matrix is not positive definite. */
export function inverseOf(
  matrix: readonly (readonly number[])[],
): readonly (readonly number[])[] | undefined {
  const size = matrix.length;
  const rows = matrix.map((row, index) => [...row, ...row.map((_, other) => (index === other ? 1 : 0))]);
  for (let pivot = 0; pivot < size; pivot += 1) {
    const pivotRow = rows[pivot] ?? [];
    const scale = pivotRow[pivot] ?? 0;
    if (!(scale > 0 && Number.isFinite(scale))) return undefined;
    const unit = pivotRow.map((value) => value / scale);
    for (const [index, row] of rows.entries()) {
      const factor = row[pivot] ?? 0;
      rows[index] = index === pivot ? unit : row.map((value, at) => value - factor * (unit[at] ?? 0));
    }
  }
  return rows.map((row) => row.slice(size));
}
