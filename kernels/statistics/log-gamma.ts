import gammaln from "@stdlib/math-base-special-gammaln";

/** ln Γ(x), x above 0. */
export function logGamma(x: number): number {
  return gammaln(x);
}

/** ln B(a, b). */
export function logBeta(a: number, b: number): number {
  return gammaln(a) + gammaln(b) - gammaln(a + b);
}
