/**
 * P(X = count) for a count that varies more than by chance alone: its variance is dispersion × mean.
 * Negative binomial with r = mean ÷ (dispersion − 1) and p = 1 ÷ dispersion, written so that dispersion 1
 * is exactly Poisson and nothing cancels near it: P(0) = exp(−mean · ln(d) ÷ (d − 1)) and
 * P(k + 1) = P(k) · (mean + k(d − 1)) ÷ (d(k + 1)). Mean from 0, dispersion from 1; throws on others.
 */
export function negativeBinomialPmf(count: number, mean: number, dispersion: number): number {
  if (!Number.isInteger(count) || count < 0) return 0;
  return negativeBinomialUpTo(count, mean, dispersion).at(-1) ?? 0;
}

/** The chances of 0, 1, … count in one go. */
export function negativeBinomialUpTo(count: number, mean: number, dispersion: number): readonly number[] {
  checkNegativeBinomial(mean, dispersion);
  const extra = dispersion - 1;
  // in logarithms, so that a mean of 1000 does not begin with exp(−1000) = 0
  let logarithm = -mean * (extra === 0 ? 1 : Math.log1p(extra) / extra);
  const chances = [Math.exp(logarithm)];
  for (let step = 0; step < count; step += 1) {
    logarithm += Math.log((mean + step * extra) / (dispersion * (step + 1)));
    chances.push(Math.exp(logarithm));
  }
  return chances;
}

function checkNegativeBinomial(mean: number, dispersion: number): void {
  if (!(mean >= 0 && Number.isFinite(mean))) throw new RangeError(`mean: ${mean}`);
  if (!(dispersion >= 1 && Number.isFinite(dispersion))) throw new RangeError(`dispersion: ${dispersion}`);
}
