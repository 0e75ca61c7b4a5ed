export type SquareMatrix = readonly (readonly number[])[];

/** L with L·Lᵀ = matrix, lower triangular; null where the matrix is not positive definite. */
export function cholesky(matrix: SquareMatrix): SquareMatrix | null {
  const lower = matrix.map((row) => row.map(() => 0));
  for (const [i, row] of matrix.entries()) {
    for (let j = 0; j <= i; j += 1) {
      const dot = product(lower[i] ?? [], lower[j] ?? [], j);
      const left = (row[j] ?? 0) - dot;
      if (i === j && !(left > 0)) return null;
      (lower[i] ?? [])[j] = i === j ? Math.sqrt(left) : left / (lower[j]?.[j] ?? 1);
    }
  }
  return lower;
}

function product(one: readonly number[], other: readonly number[], until: number): number {
  let sum = 0;
  for (let k = 0; k < until; k += 1) sum += (one[k] ?? 0) * (other[k] ?? 0);
  return sum;
}

/** L·z. */
export function lowerTimes(lower: SquareMatrix, z: readonly number[]): readonly number[] {
  return lower.map((row, i) => product(row, z, i + 1));
}

/** The z with L·z = x. */
export function lowerSolve(lower: SquareMatrix, x: readonly number[]): readonly number[] {
  const z: number[] = [];
  for (const [i, row] of lower.entries()) z.push(((x[i] ?? 0) - product(row, z, i)) / (row[i] ?? 1));
  return z;
}
