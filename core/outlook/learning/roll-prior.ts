import { betaQuantile, gammaQuantile, logBeta, logGamma } from "#kernels/statistics";
import type { RollRates } from "../roll/roll-rates.ts";

/** What she guesses before the class has shown anything; `onRoll` where it ran before the first session recorded. */
export type RollGuess = RollRates & {
  /** regulars before the first session, when nobody knows how many; null when that is known */
  readonly onRoll: number | null;
};

/** A guess as a prior: newcomers and the roll Gamma(shape, mean), the shares Beta(a, b). */
export type RollPrior = {
  readonly newcomers: { readonly shape: number; readonly mean: number };
  readonly shares: readonly { readonly a: number; readonly b: number }[];
  readonly onRoll: { readonly shape: number; readonly mean: number } | null;
};

/** Guesses weigh as much as four weeks of a class: its newcomers, and a roll of ten who come or do not. */
const WEEKS = 4;
const ROLL = 10;
// Four weeks of ten people are 40 chances to stop, which at one in fifty is 0.8 of a person: that would let a class in
// which nobody ever stops through as likely. So stopping is given the weight of four who stopped.
const STOPPED = 4;

/** Throws on a guess of nought or one, which nothing could move: the reader of the document has looked at them. */
export function rollPrior({ newcomers, stays, attends, leaves, onRoll }: RollGuess): RollPrior {
  const arrived = Math.max(WEEKS * newcomers, 1);
  return {
    newcomers: { shape: arrived, mean: newcomers },
    shares: [
      betaOf(stays, Math.max(arrived, WEEKS)),
      betaOf(attends, WEEKS * ROLL),
      betaOf(leaves, STOPPED / leaves),
    ],
    onRoll: onRoll === null ? null : { shape: WEEKS, mean: onRoll },
  };
}

function betaOf(mean: number, weight: number): { readonly a: number; readonly b: number } {
  if (!(mean > 0 && mean < 1)) throw new RangeError(`share: ${mean}`);
  return { a: mean * weight, b: (1 - mean) * weight };
}

// Draws live where every real number is allowed: logarithms of what is above nought, log odds of shares.

export function ratesOf(draw: readonly number[]): RollRates & { readonly onRoll: number } {
  const [newcomers = 0, stays = 0, attends = 0, leaves = 0, onRoll] = draw;
  return {
    newcomers: Math.exp(newcomers),
    stays: share(stays),
    attends: share(attends),
    leaves: share(leaves),
    onRoll: onRoll === undefined ? 0 : Math.exp(onRoll),
  };
}

function share(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}

/** The prior's draw at a point of the unit cube. */
export function priorDraw(prior: RollPrior, point: readonly number[]): readonly number[] {
  const inside = (index: number): number => Math.min(Math.max(point[index] ?? 0.5, 1e-9), 1 - 1e-9);
  const { newcomers, shares, onRoll } = prior;
  return [
    Math.log(gammaQuantile(inside(0), newcomers.shape, newcomers.mean)),
    ...shares.map(({ a, b }, index) => {
      const quantile = Math.min(Math.max(betaQuantile(inside(index + 1), a, b), 1e-9), 1 - 1e-9);
      return Math.log(quantile / (1 - quantile));
    }),
    ...(onRoll === null ? [] : [Math.log(gammaQuantile(inside(4), onRoll.shape, onRoll.mean))]),
  ];
}

/** ln of the prior's density at a draw, in the coordinates of the draw. */
export function logPrior(prior: RollPrior, draw: readonly number[]): number {
  const { newcomers, shares, onRoll } = prior;
  const parts = [
    logGammaDensity(newcomers, draw[0] ?? 0),
    ...shares.map((beta, index) => logBetaDensity(beta, draw[index + 1] ?? 0)),
    ...(onRoll === null ? [] : [logGammaDensity(onRoll, draw[4] ?? 0)]),
  ];
  return parts.reduce((sum, part) => sum + part, 0);
}

/** Gamma in x = ln value: shape·(x − ln scale) − value ÷ scale − ln Γ(shape). */
function logGammaDensity(
  { shape, mean }: { readonly shape: number; readonly mean: number },
  x: number,
): number {
  const scaled = x - Math.log(mean / shape);
  return shape * scaled - Math.exp(scaled) - logGamma(shape);
}

/** Beta in log odds: a·ln p + b·ln(1 − p) − ln B(a, b). */
function logBetaDensity({ a, b }: { readonly a: number; readonly b: number }, odds: number): number {
  const low = -Math.log1p(Math.exp(-Math.abs(odds)));
  const [logYes, logNo] = odds >= 0 ? [low, low - odds] : [low + odds, low];
  return a * logYes + b * logNo - logBeta(a, b);
}
