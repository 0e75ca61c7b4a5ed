import { matchedCount, normalDensity } from "#kernels/statistics";
import { planOf, type RollQuestion } from "../learning/learned-roll.ts";
import type { RollDraw } from "../learning/roll-prior.ts";
import { rollMoments, withLuck } from "../roll/roll-moments.ts";
import { takeSeen } from "../roll/seen-moments.ts";

/** A session ahead: the season of its week and its places. */
export type SessionAhead = { readonly season: number; readonly capacity: number };

/** What is to be expected of a session, over all that is not known; chances of each number of people on mats. */
export type HeadsAhead = {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** how many want to come, on average */
  readonly demand: number;
  readonly chanceFull: number;
  readonly chances: Float64Array;
};

/** The heads of all sessions together, for one draw of the rates: a normal curve. */
export type TotalHeads = { readonly mean: number; readonly variance: number };

export type LookAhead = {
  readonly sessions: readonly HeadsAhead[];
  /** one for each draw, all equally likely */
  readonly totals: readonly TotalHeads[];
  /** for each draw, the expected heads of each session */
  readonly expected: readonly Float64Array[];
};

/**
 * The people on mats at every session ahead, given the record: for each draw of the rates the moments of the roll once
 * what was seen is taken in, cut off at the places, and then all draws together. No simulation is needed. Throws
 * without a draw.
 */
export function lookAhead(
  question: RollQuestion,
  sample: readonly RollDraw[],
  ahead: readonly SessionAhead[],
): LookAhead {
  if (sample.length === 0) throw new RangeError("no draw of the rates");
  const past = question.record.seen.length;
  const seasons = ahead.map(({ season }) => season);
  const chances = ahead.map(({ capacity }) => new Float64Array(capacity + 1));
  const demand = new Float64Array(ahead.length);
  const totals: TotalHeads[] = [];
  const expected: Float64Array[] = [];
  for (const draw of sample) {
    const moments = rollMoments(draw, planOf(question, draw, seasons));
    takeSeen(moments, question.record.seen);
    const cut = ahead.map(({ capacity }, at) => {
      const s = past + at;
      const mean = moments.mean[s]!;
      const variance = moments.covariance[s * moments.sessions + s]!;
      return cutOff(mean, withLuck(variance, mean, moments.luck[s]!), capacity);
    });
    for (const [at, each] of cut.entries()) {
      addTo(chances[at]!, each.chances, sample.length);
      demand[at] = demand[at]! + Math.max(0, moments.mean[past + at]!) / sample.length;
    }
    expected.push(Float64Array.from(cut, ({ mean }) => mean));
    totals.push(totalOf(cut, past, moments.sessions, moments.covariance));
  }
  return {
    sessions: chances.map((each, at) => headsAhead(each, demand[at] ?? 0)),
    totals,
    expected,
  };
}

/** min(D, places): its chances and moments, and how far it follows the demand. */
type CutOff = {
  readonly chances: Float64Array;
  readonly mean: number;
  readonly variance: number;
  /** P(D < places): so much of a small change in demand is seen on the mats */
  readonly follows: number;
  /** the height of the demand's curve at the places */
  readonly bends: number;
};

function cutOff(mean: number, variance: number, capacity: number): CutOff {
  const chances = matchedCount(mean, variance, capacity);
  let first = 0;
  let second = 0;
  for (let count = 0; count <= capacity; count += 1) {
    first += count * chances[count]!;
    second += count * count * chances[count]!;
  }
  const deviation = Math.sqrt(Math.max(variance, 1e-9));
  return {
    chances,
    mean: first,
    variance: Math.max(0, second - first * first),
    follows: 1 - chances[capacity]!,
    bends: normalDensity((capacity - mean) / deviation) / deviation,
  };
}

/**
 * The sum of all sessions: their means, and the covariance of what is seen of two of them by its series in that of the
 * demand, c·P(D < K)·P(D′ < K′) + c²/2·f(K)·f′(K′): Price's theorem for a normal pair, to the second order.
 */
function totalOf(
  cut: readonly CutOff[],
  past: number,
  sessions: number,
  covariance: Float64Array,
): TotalHeads {
  let mean = 0;
  let variance = 0;
  for (const [s, one] of cut.entries()) {
    mean += one.mean;
    variance += one.variance;
    const row = (past + s) * sessions + past;
    for (let t = s + 1; t < cut.length; t += 1) {
      const other = cut[t]!;
      const link = covariance[row + t]!;
      variance += 2 * link * one.follows * other.follows + link * link * one.bends * other.bends;
    }
  }
  return { mean, variance };
}

function addTo(sum: Float64Array, chances: Float64Array, draws: number): void {
  for (let count = 0; count < sum.length; count += 1) sum[count] = sum[count]! + chances[count]! / draws;
}

function headsAhead(chances: Float64Array, demand: number): HeadsAhead {
  let mean = 0;
  for (const [count, chance] of chances.entries()) mean += count * chance;
  return {
    mean,
    low: countBelow(chances, 0.1),
    high: countBelow(chances, 0.9),
    demand,
    chanceFull: chances.at(-1) ?? 0,
    chances,
  };
}

/** The least count that is not exceeded with at least this chance. */
function countBelow(chances: Float64Array, share: number): number {
  let sum = 0;
  for (const [count, chance] of chances.entries()) {
    sum += chance;
    if (sum >= share - 1e-12) return count;
  }
  return chances.length - 1;
}
