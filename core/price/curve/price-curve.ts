import { type CountModel, expectedMinimum } from "#kernels/statistics";
import { type DemandCurve, headsAt } from "./demand-curve.ts";

/** What a price is weighed with: amounts in minor units, as plain numbers. */
export type PriceSetting = {
  readonly capacity: number;
  /** variance ÷ mean of the heads; 1 is Poisson */
  readonly dispersion: number;
  readonly perHead: number;
  readonly cost: number;
  /** what is collected of the single price on average over the mix: 0.9 when passes and free places take a tenth */
  readonly collected: number;
  /** the prices looked at, in minor units */
  readonly from: number;
  readonly until: number;
};

export type PriceAt = {
  readonly price: number;
  /** who would like to come */
  readonly demand: number;
  /** E[min(D, K)] */
  readonly heads: number;
  /** E[min(D, K)] × (price × collected − v) − C */
  readonly contribution: number;
};

export type PriceCurve = {
  readonly curve: DemandCurve;
  readonly points: readonly PriceAt[];
  readonly best: PriceAt;
  /** the prices around the best that leave at least 95 % of it; null when even the best leaves nothing */
  readonly range: PriceRange | null;
  /** the best is the first or last price looked at: the curve does not say where to stop */
  readonly atEdge: "lowest" | "highest" | null;
};

export type PriceRange = { readonly from: number; readonly until: number };

const NEARLY = 0.95;

/** The expected contribution over a row of prices, the best of them and those within 5 % of it. Methods 3. */
export function priceCurve(curve: DemandCurve, setting: PriceSetting): PriceCurve {
  const points = pricesLookedAt(setting).map((price) => priceAt(curve, price, setting));
  const best = points.reduce((most, point) => (point.contribution > most.contribution ? point : most));
  const place = points.indexOf(best);
  return {
    curve,
    points,
    best,
    range: best.contribution > 0 ? rangeAround(points, place) : null,
    atEdge: place === 0 ? "lowest" : place === points.length - 1 ? "highest" : null,
  };
}

export function priceAt(curve: DemandCurve, price: number, setting: PriceSetting): PriceAt {
  const { capacity, dispersion, perHead, cost, collected } = setting;
  const mean = headsAt(curve, price);
  const demand: CountModel =
    dispersion === 1 ? { kind: "poisson", mean } : { kind: "varied", mean, dispersion };
  const heads = expectedMinimum(demand, capacity);
  return { price, demand: mean, heads, contribution: heads * (price * collected - perHead) - cost };
}

// In coins: prices that a person would set, so that at most MOST_PRICES are looked at.
const STEPS = [1, 5, 10, 20, 50, 100, 200, 500, 1000, 5000, 10_000, 100_000, 1_000_000, 100_000_000];
const MOST_PRICES = 160;

/** From the lowest to the highest in even steps of whole coins that are kind to a purse. */
export function pricesLookedAt({ from, until }: PriceRange): readonly number[] {
  const step = STEPS.find((it) => (until - from) / it < MOST_PRICES) ?? until - from;
  const first = Math.max(1, Math.ceil(from / step)) * step;
  const count = Math.max(0, Math.floor((until - first) / step));
  return Array.from({ length: count + 1 }, (_, index) => first + index * step);
}

function rangeAround(points: readonly PriceAt[], place: number): PriceRange {
  const enough = (points[place]?.contribution ?? 0) * NEARLY;
  const isNear = (index: number): boolean =>
    (points[index]?.contribution ?? Number.NEGATIVE_INFINITY) >= enough;
  let low = place;
  let high = place;
  while (isNear(low - 1)) low -= 1;
  while (isNear(high + 1)) high += 1;
  return { from: points[low]?.price ?? 0, until: points[high]?.price ?? 0 };
}

/** The prices that are within 5 % of the best on every curve; null when there are none. */
export function agreedRange(curves: readonly PriceCurve[]): PriceRange | null {
  const ranges = curves.map(({ range }) => range);
  if (ranges.length === 0 || ranges.includes(null)) return null;
  const from = Math.max(...ranges.map((range) => range?.from ?? 0));
  const until = Math.min(...ranges.map((range) => range?.until ?? 0));
  return from <= until ? { from, until } : null;
}
