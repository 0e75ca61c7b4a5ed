// Slow, plain and independent: whole numbers only, no shared code with the kernels. For tests.

const DIGITS = 10n ** 200n;

/** A quotient of whole numbers as a double, with 200 digits kept before it is rounded. */
export function quotient(numerator: bigint, denominator: bigint): number {
  return Number((numerator * DIGITS) / denominator) / 1e200;
}

export function choose(all: number, taken: number): bigint {
  let ways = 1n;
  for (let step = 0; step < taken; step += 1) ways = (ways * BigInt(all - step)) / BigInt(step + 1);
  return ways;
}

/** P(X = k), chance = hit ÷ of: the definition, C(n, k) h^k (o − h)^(n − k) ÷ o^n. */
export function exactBinomial(k: number, n: number, hit: number, of: number): number {
  return quotient(
    choose(n, k) * BigInt(hit) ** BigInt(k) * BigInt(of - hit) ** BigInt(n - k),
    BigInt(of) ** BigInt(n),
  );
}

/** P(X ≤ k). */
export function exactBinomialAtMost(k: number, n: number, hit: number, of: number): number {
  let sum = 0n;
  for (let count = 0; count <= k; count += 1) {
    sum += choose(n, count) * BigInt(hit) ** BigInt(count) * BigInt(of - hit) ** BigInt(n - count);
  }
  return quotient(sum, BigInt(of) ** BigInt(n));
}

/** e^(−mean) to some 200 digits, scaled by 10^200: 1 ÷ Σ mean^i ÷ i!, the mean a whole number of tenths. */
function expMinusTenths(tenths: number): bigint {
  let term = DIGITS;
  let sum = 0n;
  for (let step = 1; term > 0n; step += 1) {
    sum += term;
    term = (term * BigInt(tenths)) / (10n * BigInt(step));
  }
  return (DIGITS * DIGITS) / sum;
}

/** P(X = k) of Poisson with mean tenths ÷ 10. */
export function exactPoisson(k: number, tenths: number): number {
  let factorial = 1n;
  for (let step = 2; step <= k; step += 1) factorial *= BigInt(step);
  return quotient(
    expMinusTenths(tenths) * BigInt(tenths) ** BigInt(k),
    DIGITS * 10n ** BigInt(k) * factorial,
  );
}

/** P(X = k) of a negative binomial with a whole r and p = hit ÷ of: C(k + r − 1, k) p^r (1 − p)^k. */
export function exactNegativeBinomial(k: number, r: number, hit: number, of: number): number {
  const top = choose(k + r - 1, k) * BigInt(hit) ** BigInt(r) * BigInt(of - hit) ** BigInt(k);
  return quotient(top, BigInt(of) ** BigInt(k + r));
}

/** P(X = k) of a beta-binomial with whole a and b, by rising factorials: C(n, k) a^(k) b^(n − k) ÷ (a + b)^(n). */
export function exactBetaBinomial(k: number, n: number, a: number, b: number): number {
  return quotient(choose(n, k) * rising(a, k) * rising(b, n - k), rising(a + b, n));
}

function rising(from: number, steps: number): bigint {
  let product = 1n;
  for (let step = 0; step < steps; step += 1) product *= BigInt(from + step);
  return product;
}
