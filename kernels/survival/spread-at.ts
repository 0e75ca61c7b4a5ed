const STEP = 1e-3;

// Where the records say nothing about a parameter, its logarithm is taken to lie within a standard deviation of
// 3, a factor of 20 either way: wide, and finite. A parameter that twenty people settle hardly feels it.
const LOOSE = 1 / 9;

/**
 * Variances and covariances of the logarithms of fitted parameters: the inverse of the curvature of −ln L at
 * its lowest point (by differences), with a loose belief added so that a level direction stays finite.
 */
export function spreadAt(
  logLikelihoodAt: (parameters: readonly number[]) => number,
  logs: readonly number[],
): readonly (readonly number[])[] {
  const curved = curvature((at) => -logLikelihoodAt(at.map((log) => Math.exp(log))), logs);
  for (let loose = LOOSE; loose < 1e9; loose *= 4) {
    const inverse = inverseOf(
      curved.map((row, index) => row.map((value, other) => value + (index === other ? loose : 0))),
    );
    if (inverse !== undefined) return inverse;
  }
  throw new RangeError(`no curvature at ${logs.join(", ")}`);
}

function curvature(valueAt: (at: readonly number[]) => number, at: readonly number[]): readonly number[][] {
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

/** By elimination without exchange, which fails exactly where the matrix is not positive definite. */
function inverseOf(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] | undefined {
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
