import { bad, good, problem, type Result } from "#core/words";

/** At 8.00 she would get 16 people: the price in minor units. */
export type PricePoint = { readonly price: number; readonly heads: number };

/**
 * How many would come at a price, by a rule through what she believes:
 * constant elasticity: ln heads = level + elasticity × ln price, so 1 % more always loses the same per cent;
 * linear: heads = level + slope × price, so each coin more always loses the same number, down to nobody.
 */
export type DemandCurve =
  | { readonly kind: "constant elasticity"; readonly level: number; readonly elasticity: number }
  | { readonly kind: "linear"; readonly level: number; readonly slope: number };

export function headsAt(curve: DemandCurve, price: number): number {
  switch (curve.kind) {
    case "constant elasticity":
      return Math.min(MOST_HEADS, Math.exp(curve.level + curve.elasticity * Math.log(price)));
    case "linear":
      return Math.min(MOST_HEADS, Math.max(0, curve.level + curve.slope * price));
  }
}

// A steep curve has more people than there are at a low price; every hall is full long before.
const MOST_HEADS = 1e6;

/**
 * Both curves through the points by least squares, the first in logarithms; through two points exactly.
 * Prices and heads are above 0. Problems: "curve-one-point", "curve-slopes-upward".
 */
export function fitCurves(points: readonly PricePoint[], place: string): Result<readonly DemandCurve[]> {
  if (new Set(points.map(({ price }) => price)).size < 2) {
    const says = "A curve needs heads at two different prices, and there is only one.";
    return bad(problem("curve-one-point", place, says, "Add how many you would get at another price."));
  }
  const plain = lineThrough(points.map(({ price, heads }) => [price, heads]));
  const logarithms = lineThrough(points.map(({ price, heads }) => [Math.log(price), Math.log(heads)]));
  if (plain.slope >= 0 || logarithms.slope >= 0) {
    const says =
      "By these figures as many or more people come when it costs more, so no price would be too high.";
    return bad(
      problem("curve-slopes-upward", place, says, "Look at them again: at a higher price fewer should come."),
    );
  }
  return good([
    { kind: "constant elasticity", level: logarithms.level, elasticity: logarithms.slope },
    { kind: "linear", level: plain.level, slope: plain.slope },
  ]);
}

type Pair = readonly [x: number, y: number];

/** Least squares about the means, which keeps digits when the prices lie close together. */
function lineThrough(pairs: readonly Pair[]): { readonly level: number; readonly slope: number } {
  const meanX = meanOf(pairs.map(([x]) => x));
  const meanY = meanOf(pairs.map(([, y]) => y));
  const across = pairs.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const spread = pairs.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const slope = across / spread;
  return { level: meanY - slope * meanX, slope };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
