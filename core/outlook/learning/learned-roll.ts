import {
  importanceDraws,
  logGamma,
  resampled,
  type WeightedDraws,
  weightedQuantile,
} from "#kernels/statistics";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { type Alike, plateauOf, type RollRates } from "../roll/roll-rates.ts";
import { type RegularsBefore, type RollPlan, rollMoments } from "../roll/roll-moments.ts";
import { takeSeen } from "../roll/seen-moments.ts";
import { logPrior, priorDraw, ratesOf, type RollDraw, type RollGuess, rollPrior } from "./roll-prior.ts";
import type { RollRecord } from "./roll-record.ts";

export type RollQuestion = {
  readonly guess: RollGuess;
  readonly alike: Alike;
  /** regulars who are known to be there before the first session */
  readonly before: readonly RegularsBefore[];
  readonly record: RollRecord;
  /** people expected to an opening, where the first session lies ahead and is one; none when left out */
  readonly opensTo?: number;
};

export type LearnedRate = { readonly mean: number; readonly low: number; readonly high: number };

export type LearnedRoll = {
  readonly rates: Readonly<Record<keyof RollRates, LearnedRate>>;
  /** the spread of the luck that an evening's people share */
  readonly luck: LearnedRate;
  /** newcomers of the second session for each who came to the opening; 0 without one */
  readonly echo: LearnedRate;
  readonly plateau: LearnedRate;
  /** every draw with its weight, for chances like that of a plateau */
  readonly drawn: readonly { readonly rates: RollDraw; readonly plateau: number; readonly weight: number }[];
  /** a smaller number of draws of equal weight, for what lies ahead */
  readonly sample: readonly RollDraw[];
  readonly draws: number;
  /** as many equal draws as these are worth */
  readonly effective: number;
  readonly rounds: number;
};

export type LearningEffort = {
  readonly each: number;
  readonly wanted: number;
  readonly rounds: number;
  readonly sample: number;
};

/** Some 600 draws are worth 250 after 40 sessions; the rounds go on where they are not. */
const USUAL_EFFORT: LearningEffort = { each: 200, wanted: 250, rounds: 9, sample: 64 };

/**
 * What the register says about newcomers, staying, coming and stopping: the posterior, drawn with a seed, the same
 * draws for the same seed. A record without a session gives the guesses back with their own uncertainty. Method:
 * methods 5.
 */
export function learnedRoll(
  question: RollQuestion,
  seed: number,
  effort: LearningEffort = USUAL_EFFORT,
): LearnedRoll {
  const prior = rollPrior(question.guess);
  const random = xoroshiro128plus(seed);
  const found = importanceDraws(
    {
      dimensions: prior.dimensions,
      priorDraw: (point) => priorDraw(prior, point),
      logPrior: (draw) => logPrior(prior, draw),
      logLikelihood: (draw) => recordLogLikelihood(question, ratesOf(prior, draw)),
    },
    // guesses alone are drawn as they are: no round could fit them better
    question.record.seen.length === 0 ? { ...effort, rounds: 1 } : effort,
    random,
  );
  const drawn = found.draws.map((draw, at) => {
    const rates = ratesOf(prior, draw);
    return { rates, plateau: plateauOf(rates, question.alike), weight: found.weights[at] ?? 0 };
  });
  const learned = (name: keyof RollDraw): LearnedRate =>
    learnedRate(
      drawn.map(({ rates }) => rates[name]),
      found,
    );
  return {
    rates: {
      newcomers: learned("newcomers"),
      stays: learned("stays"),
      attends: learned("attends"),
      leaves: learned("leaves"),
    },
    luck: learned("luck"),
    echo: learned("echo"),
    plateau: learnedRate(
      drawn.map(({ plateau }) => plateau),
      found,
    ),
    drawn,
    sample: resampled(found, effort.sample, random).map((draw) => ratesOf(prior, draw)),
    draws: found.draws.length,
    effective: found.effective,
    rounds: found.rounds,
  };
}

function learnedRate(values: readonly number[], { weights }: WeightedDraws): LearnedRate {
  return {
    mean: values.reduce((sum, value, at) => sum + value * (weights[at] ?? 0), 0),
    low: weightedQuantile(values, weights, 0.1),
    high: weightedQuantile(values, weights, 0.9),
  };
}

/**
 * ln of the chance of the record: that of the heads by the roll, and of the newcomers who were counted. Those of full
 * sessions count too: they are full more often where more are new, and without them the rate came out too low. Who came
 * for the opening says nothing of an ordinary week, only how the opening's own people stay.
 */
export function recordLogLikelihood(question: RollQuestion, draw: RollDraw): number {
  const { record } = question;
  if (record.seen.length === 0) return 0;
  const plan = planOf(question, draw, []);
  const heads = takeSeen(rollMoments(draw, plan), record.seen);
  return record.newcomers.reduce<number>((sum, count, at) => {
    if (count === null || (at === 0 && record.opening !== null)) return sum;
    const mean = draw.newcomers * (record.seasons[at] ?? 1) + (plan.more?.[at] ?? 0);
    return sum + logChanceOf(count, Math.max(mean, 1e-12), draw.luck ** 2);
  }, heads);
}

/** ln P(count) of a Poisson count about a Gamma mean with this variance about 1; nothing is a Poisson count. */
function logChanceOf(count: number, mean: number, luck: number): number {
  if (luck < 1e-6) return count * Math.log(mean) - mean - logGamma(count + 1);
  const shape = 1 / luck;
  const chosen = logGamma(shape + count) - logGamma(shape) - logGamma(count + 1);
  return chosen - shape * Math.log1p(mean * luck) + count * Math.log((mean * luck) / (1 + mean * luck));
}

/** The sessions recorded and those ahead as one plan of the roll. */
export function planOf(question: RollQuestion, draw: RollDraw, ahead: readonly number[]): RollPlan {
  const { alike, before, record, guess } = question;
  const uncertain = guess.onRoll === null ? [] : [{ people: draw.onRoll, weeks: 0, known: false }];
  return {
    alike,
    luck: draw.luck,
    before: [...before, ...uncertain],
    seasons: [...record.seasons, ...ahead],
    newcomers: [...record.newcomers, ...ahead.map(() => null)],
    more: moreOf(question, draw, ahead),
  };
}

/**
 * Who comes beyond an ordinary week: to an opening ahead as many as are expected; after an opening friends of those who
 * were there, and who could not come the first time: at the second session, half at the third.
 */
function moreOf(
  { record, opensTo }: RollQuestion,
  draw: RollDraw,
  ahead: readonly number[],
): readonly number[] {
  const begun = record.seen.length > 0;
  const opening = begun ? record.opening : (opensTo ?? null);
  if (opening === null) return [];
  const first = begun ? 0 : opening - draw.newcomers * (ahead[0] ?? 1);
  return [first, draw.echo * opening, (draw.echo * opening) / 2];
}
