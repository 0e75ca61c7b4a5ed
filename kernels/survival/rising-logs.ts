/** ln of from·(from + 1)···(from + n − 1) for n = 0 … most: ratios of gammas without a gamma, and none cancels. */
export function risingLogs(from: number, most: number): Float64Array {
  const logs = new Float64Array(most + 1);
  let sum = 0;
  for (let step = 0; step < most; step += 1) {
    sum += Math.log(from + step);
    logs[step + 1] = sum;
  }
  return logs;
}

/** ln(e^a + e^b) without leaving the range of a double. */
export function logOfSum(a: number, b: number): number {
  const high = Math.max(a, b);
  return high === Number.NEGATIVE_INFINITY ? high : high + Math.log1p(Math.exp(Math.min(a, b) - high));
}
