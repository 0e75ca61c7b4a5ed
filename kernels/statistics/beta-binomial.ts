import type { Distribution } from "./distribution.ts";

/**
 * Successes of n trials whose common chance is itself Beta(a, b), as when people come in pairs or all stay
 * away in the rain: a = b = 1 makes every count equally likely. Whole trials from 0, a and b above 0.
 * By the ratio of neighbours, P(k + 1) ÷ P(k) = (n − k)(k + a) ÷ ((k + 1)(n − k − 1 + b)), from the
 * likeliest count outwards and then divided by the sum, so that nothing overflows or cancels.
 */
export function betaBinomial(trials: number, a: number, b: number): Distribution {
  if (!Number.isInteger(trials) || trials < 0) throw new RangeError(`trials: ${trials}`);
  if (!(a > 0 && b > 0 && Number.isFinite(a + b))) throw new RangeError(`a, b: ${a}, ${b}`);
  const ratio = (count: number): number =>
    ((trials - count) * (count + a)) / ((count + 1) * (trials - count - 1 + b));
  // any start is right; one of middling likelihood keeps the weights in the range of a double
  const start = Math.min(trials, Math.floor((trials * a) / (a + b)));
  const weights = Array.from({ length: trials + 1 }, () => 0);
  weights[start] = 1;
  for (let count = start; count < trials; count += 1) {
    weights[count + 1] = (weights[count] ?? 0) * ratio(count);
  }
  for (let count = start; count > 0; count -= 1) {
    weights[count - 1] = (weights[count] ?? 0) / ratio(count - 1);
  }
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
