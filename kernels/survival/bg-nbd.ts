/**
 * Coming as it pleases them: while somebody still comes, visits fall as Poisson with a rate of Gamma(r, alpha) a
 * unit of time, and after each visit the person stops for good with a chance of Beta(a, b).
 * P. Fader, B. Hardie and K. Lee, Marketing Science 24(2), 2005.
 */
export type BgNbd = { readonly r: number; readonly alpha: number; readonly a: number; readonly b: number };

/** Visits after the first, the time from the first to the last visit, and to the end of watching. */
export type Repeats = { readonly repeats: number; readonly last: number; readonly span: number };

/**
 * The chance that the person still comes at the end of watching. By the model somebody who never came again
 * has had no visit to stop after: 1, which says little; `chanceOfAnother` says more.
 */
export function chanceStillComing(parameters: BgNbd, seen: Repeats): number {
  const { r, alpha, a, b } = parameters;
  const { repeats, last, span } = mustBeRepeats(seen);
  if (repeats === 0) return 1;
  const longer = (r + repeats) * Math.log1p((span - last) / (alpha + last));
  return 1 / (1 + Math.exp(Math.log(a / (b + repeats - 1)) + longer));
}

/** The chance of at least one more visit within `time`. */
export function chanceOfAnother(parameters: BgNbd, seen: Repeats, time: number): number {
  const rate = (parameters.r + seen.repeats) * Math.log1p(time / (parameters.alpha + seen.span));
  return chanceStillComing(parameters, seen) * -Math.expm1(-rate);
}

/** Visits to expect of this person in the next `time`. */
export function expectedVisits(parameters: BgNbd, seen: Repeats, time: number): number {
  return visitMoments(parameters, seen, time).mean;
}

/** The mean and the variance of this person's visits in the next `time`, as far as the parameters are right. */
export function visitMoments(parameters: BgNbd, seen: Repeats, time: number): Moments {
  const { r, alpha, a, b } = parameters;
  // of one who still comes, what was seen turns the four into these
  const since = { r: r + seen.repeats, alpha: alpha + seen.span, a, b: b + seen.repeats };
  const still = chanceStillComing(parameters, seen);
  const { mean, pairs } = repeatMoments(since, time);
  return momentsOf(still * mean, still * pairs);
}

export type Moments = { readonly mean: number; readonly variance: number };

/** From the mean and E[N(N − 1)]: both grow with the chance that anything comes about at all. */
export function momentsOf(mean: number, pairs: number): Moments {
  return { mean, variance: Math.max(0, pairs + mean - mean ** 2) };
}

const MOST_TERMS = 300_000;

/**
 * Visits to expect in `time` from somebody new, the first not counted. If nobody stopped their number would be
 * negative binomial; the j-th comes about where none of the j − 1 before was the last, which is beta-geometric
 * survival. So E = Σ P(N ≥ j) S(j − 1): every term is positive and no place is singular, unlike the form with
 * the hypergeometric function, which has poles at a = 1 and a + b = 1.
 */
export function expectedRepeats(parameters: BgNbd, time: number): number {
  return repeatMoments(parameters, time).mean;
}

/** The mean number of repeats N, and E[N(N − 1)] = 2 Σ (j − 1) P(N ≥ j). */
function repeatMoments(
  { r, alpha, a, b }: BgNbd,
  time: number,
): { readonly mean: number; readonly pairs: number } {
  if (!(time >= 0 && Number.isFinite(time))) throw new RangeError(`time: ${time}`);
  const share = time / (alpha + time);
  const usual = (r * time) / alpha;
  let logChance = -r * Math.log1p(time / alpha);
  let atLeast = -Math.expm1(logChance);
  let stays = 1;
  let mean = 0;
  let pairs = 0;
  for (let count = 1; count <= MOST_TERMS && atLeast > 0; count += 1) {
    const term = atLeast * stays;
    mean += term;
    pairs += 2 * (count - 1) * term;
    logChance += Math.log(((r + count - 1) / count) * share);
    const chance = Math.exp(logChance);
    // beyond the mean the chances fall as powers of the share; what is left of one keeps a rounding for ever
    if (count > usual && (chance * count) / (1 - share) < mean * 1e-16) break;
    atLeast -= chance;
    stays *= (b + count - 1) / (a + b + count - 1);
  }
  return { mean, pairs };
}

/** P(0), P(1) … P(most) repeat visits of somebody new in `time`. */
export function repeatChances({ r, alpha, a, b }: BgNbd, time: number, most: number): readonly number[] {
  const share = time / (alpha + time);
  let logChance = -r * Math.log1p(time / alpha);
  let atLeast = 1;
  let stays = 1;
  return Array.from({ length: most + 1 }, (_, count) => {
    if (count > 0) logChance += Math.log(((r + count - 1) / count) * share);
    const chance = Math.exp(logChance);
    // stopped after the count-th visit, with that many or more that would have come
    const stopped = count === 0 ? 0 : (stays * a) / (a + b + count - 1);
    if (count > 0) stays *= (b + count - 1) / (a + b + count - 1);
    const found = stays * chance + stopped * atLeast;
    atLeast -= chance;
    return found;
  });
}

export function mustBeRepeats(seen: Repeats): Repeats {
  const { repeats, last, span } = seen;
  if (!(Number.isInteger(repeats) && repeats >= 0)) throw new RangeError(`repeats: ${repeats}`);
  if (!(last >= 0 && span >= last && Number.isFinite(span)))
    throw new RangeError(`last, span: ${last}, ${span}`);
  if (repeats === 0 && last !== 0) throw new RangeError(`last without a repeat: ${last}`);
  return seen;
}
