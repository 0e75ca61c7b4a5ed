// Slow, plain and independent: every figure as a sum over a fine net of rates and chances, no gamma function and
// no closed form. For tests.

type Weighed = { readonly value: number; readonly weight: number };

/** Beta(a, b) as weights on a net of logits; they add to one by division, not by a formula. */
export function betaNet(a: number, b: number, step = 0.2): readonly Weighed[] {
  return normal(
    range(-150, 150, step).map((logit) => {
      const value = 1 / (1 + Math.exp(-logit));
      // x^(a−1) (1 − x)^(b−1) dx, and dx = x (1 − x) dlogit
      return { value, weight: Math.exp(-a * Math.log1p(Math.exp(-logit)) - b * Math.log1p(Math.exp(logit))) };
    }),
  );
}

/** Gamma with shape r and rate alpha as weights on a net of logarithms. */
export function gammaNet(r: number, alpha: number, step = 0.1): readonly Weighed[] {
  return normal(
    range(-120, 8, step).map((log) => {
      const value = Math.exp(log);
      return { value, weight: Math.exp(r * log - alpha * value) };
    }),
  );
}

/** The mean of a figure over one or two nets. */
export function over(net: readonly Weighed[], figure: (value: number) => number): number {
  return net.reduce((sum, { value, weight }) => sum + weight * figure(value), 0);
}

function normal(net: readonly Weighed[]): readonly Weighed[] {
  const all = net.reduce((sum, it) => sum + it.weight, 0);
  return net.map(({ value, weight }) => ({ value, weight: weight / all })).filter((it) => it.weight > 1e-25);
}

function range(from: number, until: number, step: number): readonly number[] {
  return Array.from({ length: Math.round((until - from) / step) + 1 }, (_, index) => from + index * step);
}
