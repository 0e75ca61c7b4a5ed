import { betaQuantile, gammaQuantile, logBeta, logGamma } from "#kernels/statistics";
import type { RollRates } from "../roll/roll-rates.ts";

/** What one draw of the posterior says of a class; what its question does not ask for is 0. */
export type RollDraw = RollRates & {
  /** regulars before the first session recorded */
  readonly onRoll: number;
  /** for each person of the opening, so many more newcomers at the second session and half as many at the third */
  readonly echo: number;
  /** the spread of a luck about 1 that all people of one evening share, like rain, illness or a match on television */
  readonly luck: number;
};

/** What she guesses before the class has shown anything. */
export type RollGuess = RollRates & {
  /** where the class ran before the first session recorded and nobody knows with how many regulars; else null */
  readonly onRoll: number | null;
  /** where the first session recorded was an opening; else null */
  readonly echo: number | null;
  /** null where no evening is luckier than another */
  readonly luck: number | null;
};

/** A guess as a prior: what is counted Gamma(shape, mean), the shares Beta(a, b). */
export type RollPrior = {
  readonly newcomers: Amount;
  readonly shares: readonly { readonly a: number; readonly b: number }[];
  readonly further: readonly (Amount & { readonly name: Further })[];
  /** numbers of a draw */
  readonly dimensions: number;
};

type Amount = { readonly shape: number; readonly mean: number };
type Further = "onRoll" | "echo" | "luck";

/** Guesses weigh as much as four weeks of a class: its newcomers, and a roll of ten who come or do not. */
const WEEKS = 4;
const ROLL = 10;
// Four weeks of ten people are 40 chances to stop, which at one in fifty is 0.8 of a person: that would let a class in
// which nobody ever stops through as likely. So stopping is given the weight of four who stopped.
const STOPPED = 4;
// How far an opening goes on hardly anybody can guess: none at all is the likeliest, four times the guess has a chance
// of one in fifty.
const ECHOES = 1;

/** Throws on a guess of nought or one, which nothing could move: the reader of the document has looked at them. */
export function rollPrior(guess: RollGuess): RollPrior {
  const { newcomers, stays, attends, leaves, onRoll, echo, luck } = guess;
  const arrived = Math.max(WEEKS * newcomers, 1);
  const further = [
    ...(onRoll === null ? [] : [{ name: "onRoll" as const, shape: WEEKS, mean: onRoll }]),
    ...(echo === null ? [] : [{ name: "echo" as const, shape: ECHOES, mean: echo }]),
    ...(luck === null ? [] : [{ name: "luck" as const, shape: WEEKS, mean: luck }]),
  ];
  return {
    newcomers: { shape: arrived, mean: newcomers },
    shares: [
      betaOf(stays, Math.max(arrived, WEEKS)),
      betaOf(attends, WEEKS * ROLL),
      betaOf(leaves, STOPPED / leaves),
    ],
    further,
    dimensions: 4 + further.length,
  };
}

function betaOf(mean: number, weight: number): { readonly a: number; readonly b: number } {
  if (!(mean > 0 && mean < 1)) throw new RangeError(`share: ${mean}`);
  return { a: mean * weight, b: (1 - mean) * weight };
}

// Draws live where every real number is allowed: logarithms of what is above nought, log odds of shares.

export function ratesOf({ further }: RollPrior, draw: readonly number[]): RollDraw {
  const [newcomers = 0, stays = 0, attends = 0, leaves = 0, ...rest] = draw;
  const amount = (name: Further): number => {
    const at = further.findIndex((it) => it.name === name);
    return at < 0 ? 0 : Math.exp(rest[at] ?? 0);
  };
  return {
    newcomers: Math.exp(newcomers),
    stays: share(stays),
    attends: share(attends),
    leaves: share(leaves),
    onRoll: amount("onRoll"),
    echo: amount("echo"),
    luck: amount("luck"),
  };
}

function share(odds: number): number {
  return 1 / (1 + Math.exp(-odds));
}

/** The prior's draw at a point of the unit cube. */
export function priorDraw(
  { newcomers, shares, further }: RollPrior,
  point: readonly number[],
): readonly number[] {
  const inside = (index: number): number => Math.min(Math.max(point[index] ?? 0.5, 1e-9), 1 - 1e-9);
  const amount = (it: Amount, index: number): number =>
    Math.log(gammaQuantile(inside(index), it.shape, it.mean));
  return [
    amount(newcomers, 0),
    ...shares.map(({ a, b }, index) => {
      const quantile = Math.min(Math.max(betaQuantile(inside(index + 1), a, b), 1e-9), 1 - 1e-9);
      return Math.log(quantile / (1 - quantile));
    }),
    ...further.map((it, index) => amount(it, 4 + index)),
  ];
}

/** ln of the prior's density at a draw, in the coordinates of the draw. */
export function logPrior({ newcomers, shares, further }: RollPrior, draw: readonly number[]): number {
  const parts = [
    logGammaDensity(newcomers, draw[0] ?? 0),
    ...shares.map((it, index) => logBetaDensity(it, draw[index + 1] ?? 0)),
    ...further.map((it, index) => logGammaDensity(it, draw[4 + index] ?? 0)),
  ];
  return parts.reduce((sum, part) => sum + part, 0);
}

/** Gamma in x = ln value: shape·(x − ln scale) − value ÷ scale − ln Γ(shape). */
function logGammaDensity({ shape, mean }: Amount, x: number): number {
  const scaled = x - Math.log(mean / shape);
  return shape * scaled - Math.exp(scaled) - logGamma(shape);
}

/** Beta in log odds: a·ln p + b·ln(1 − p) − ln B(a, b). */
function logBetaDensity({ a, b }: { readonly a: number; readonly b: number }, odds: number): number {
  const low = -Math.log1p(Math.exp(-Math.abs(odds)));
  const [logYes, logNo] = odds >= 0 ? [low, low - odds] : [low + odds, low];
  return a * logYes + b * logNo - logBeta(a, b);
}
