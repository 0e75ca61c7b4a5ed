import { poissonPmf } from "./poisson.ts";
import { countAtLeast } from "./count-model.ts";

/** What was seen of a count: 11 itself, or that it was 14 or more, as when 14 places were full. */
export type SeenCount = { readonly kind: "exact" | "at least"; readonly count: number };

/** ln L(mean) = Σ ln P(D = n) over the exact + Σ ln P(D ≥ n) over the others, D ~ Poisson(mean). */
export function seenLogLikelihood(seen: readonly SeenCount[], mean: number): number {
  return seen.reduce((sum, { kind, count }) => {
    const chance =
      kind === "exact" ? poissonPmf(count, mean) : countAtLeast({ kind: "poisson", mean }, count);
    return sum + Math.log(chance);
  }, 0);
}

/**
 * The mean with the greatest likelihood; null when there is none, because every count is "at least" something
 * above nought and more is always more likely. Where Σ E[D | what was seen] = n × mean, by halving: the
 * likelihood of a censored Poisson count has one top.
 */
export function likeliestMean(seen: readonly SeenCount[]): number | null {
  if (seen.every(({ kind, count }) => kind === "at least" && count > 0)) return null;
  if (seen.every(({ count }) => count === 0)) return 0;
  let low = 0;
  let high = 1 + 2 * Math.max(...seen.map(({ count }) => count));
  // the top lies below: at a mean where what was seen would be explained by less
  while (slope(seen, high) > 0) high *= 2;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (slope(seen, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

// from a thousand down to the last digits of a double
const HALVINGS = 60;

/** The sign of d ln L ÷ d mean: Σ E[D | seen] − n × mean. */
function slope(seen: readonly SeenCount[], mean: number): number {
  return seen.reduce((sum, each) => sum + expectedGiven(each, mean) - mean, 0);
}

/** E[D | D ≥ n] = mean × P(D ≥ n − 1) ÷ P(D ≥ n). */
function expectedGiven({ kind, count }: SeenCount, mean: number): number {
  if (kind === "exact") return count;
  const model = { kind: "poisson", mean } as const;
  const chance = countAtLeast(model, count);
  // a mean so small that the count cannot be reached: what was seen is then the least of it
  return chance === 0 ? count : (mean * countAtLeast(model, count - 1)) / chance;
}

/**
 * The means below which the likelihood has so much of its weight, every mean from 0 to `most` held as likely as
 * another beforehand. By trapezia on an even grid.
 */
export function meanQuantiles(
  seen: readonly SeenCount[],
  most: number,
  shares: readonly number[],
): readonly number[] {
  const step = most / GRID;
  const logs = Array.from({ length: GRID + 1 }, (_, at) => seenLogLikelihood(seen, at * step));
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const areas = weights.slice(1).map((weight, at) => (weight + (weights[at] ?? 0)) / 2);
  const all = areas.reduce((sum, area) => sum + area, 0);
  return shares.map((share) => step * placeOf(areas, share * all));
}

const GRID = 600;

function placeOf(areas: readonly number[], wanted: number): number {
  let sum = 0;
  for (const [at, area] of areas.entries()) {
    if (sum + area >= wanted) return at + (area === 0 ? 0 : (wanted - sum) / area);
    sum += area;
  }
  return areas.length;
}
