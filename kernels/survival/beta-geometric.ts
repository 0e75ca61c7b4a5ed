/** Each has a chance of his own to end at each period, spread as Beta(alpha, beta) over the people. */
export type BetaGeometric = { readonly alpha: number; readonly beta: number };

/**
 * S(0), S(1) … S(periods): the share that is still there after so many periods, B(α, β + t) ÷ B(α, β), as a
 * product of (β + i) ÷ (α + β + i), which neither overflows nor cancels (P. Fader and B. Hardie, 2007).
 */
export function survivalOf(parameters: BetaGeometric, periods: number): readonly number[] {
  const { alpha, beta } = mustBePositive(parameters);
  const shares = [1];
  let share = 1;
  for (let period = 0; period < periods; period += 1) {
    share *= (beta + period) / (alpha + beta + period);
    shares.push(share);
  }
  return shares;
}

/** The share of those there after t periods who stay through the next: (β + t) ÷ (α + β + t). */
export function retentionAfter(parameters: BetaGeometric, periods: number): number {
  const { alpha, beta } = mustBePositive(parameters);
  return (beta + periods) / (alpha + beta + periods);
}

/** Periods on average, of the next `periods`, that one who has stayed `stayed` stays through. */
export function expectedPeriods(parameters: BetaGeometric, stayed: number, periods: number): number {
  const later = { alpha: parameters.alpha, beta: parameters.beta + stayed };
  return survivalOf(later, periods).reduce((sum, share, period) => (period === 0 ? 0 : sum + share), 0);
}

/** One group that began together: how many ended in period 1, 2, …, and how many are still there after the last. */
export type Cohort = { readonly ended: readonly number[]; readonly still: number };

/** [1000, 631, 468] as the heads of one group at the start and after each period. */
export function cohortOf(heads: readonly number[]): Cohort {
  const ended = heads.slice(1).map((head, index) => (heads[index] ?? 0) - head);
  if (ended.some((count) => !(count >= 0))) throw new RangeError(`heads that grow: ${heads.join(", ")}`);
  return { ended, still: heads.at(-1) ?? 0 };
}

/** Σ ended(t) ln P(t) + still · ln S(last); 0 people say nothing. */
export function betaGeometricLogLikelihood(parameters: BetaGeometric, cohorts: readonly Cohort[]): number {
  const longest = Math.max(0, ...cohorts.map(({ ended }) => ended.length));
  const { alpha, beta } = mustBePositive(parameters);
  // ln S(t) by its own sum, so that a share too small for a double still has its logarithm
  const logs = [0];
  for (let period = 0; period < longest; period += 1) {
    logs.push((logs[period] ?? 0) + Math.log1p(-alpha / (alpha + beta + period)));
  }
  let sum = 0;
  for (const { ended, still } of cohorts) {
    if (still > 0) sum += still * (logs[ended.length] ?? 0);
    for (const [index, count] of ended.entries()) {
      if (count > 0) sum += count * ((logs[index] ?? 0) + Math.log(alpha / (alpha + beta + index)));
    }
  }
  return sum;
}

function mustBePositive(parameters: BetaGeometric): BetaGeometric {
  const { alpha, beta } = parameters;
  if (!(alpha > 0 && beta > 0 && Number.isFinite(alpha + beta))) {
    throw new RangeError(`alpha, beta: ${alpha}, ${beta}`);
  }
  return parameters;
}
