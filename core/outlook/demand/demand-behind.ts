import {
  expectedOver,
  likeliestMean,
  meanQuantiles,
  type SeenCount,
  seenLogLikelihood,
} from "#kernels/statistics";
import { type DatelessSession, demandSeen } from "../happened/held-session.ts";

/** Ten weeks of 14 places, 14 14 12 14 13 14 14 11 14 14: 16.1 wanted to come, 2.8 were turned away each time. */
export type DemandBehind = {
  readonly sessions: number;
  /** sessions without a place left */
  readonly full: number;
  /** those of them of which nobody counted who was turned away */
  readonly uncounted: number;
  readonly meanHeads: number;
  /** the likeliest mean of those who wanted to come; where every session was full, a mean that makes that an even chance */
  readonly mean: number;
  /** eight chances of ten lie between them */
  readonly low: number;
  readonly high: number;
  /** most sessions were full, so the mean is a lower side only */
  readonly atLeast: boolean;
  /** E[(D − places)+], on average over the sessions, at the mean, the low and the high */
  readonly turnedAway: number;
  readonly turnedAwayLow: number;
  readonly turnedAwayHigh: number;
  readonly seen: readonly SeenCount[];
};

/** Above this share of full sessions heads tell only "at least". */
const MOSTLY_FULL = 0.8;
/** No more than this many times the places are held possible where heads cannot tell: a planning assumption. */
const MOST_TIMES_PLACES = 3;

/**
 * How many wanted to come, when full sessions show only that it was their places or more: the mean with the
 * greatest likelihood, each session an independent Poisson count, and the band of a likelihood in which every mean
 * from 0 to three times the places was held as likely as another. Throws without a session. Method: methods 5,
 * trade F11.
 */
export function demandBehind(sessions: readonly DatelessSession[]): DemandBehind {
  if (sessions.length === 0) throw new RangeError("no session");
  const seen = sessions.map(demandSeen);
  const most = MOST_TIMES_PLACES * Math.max(...sessions.map(({ capacity }) => capacity), ...counts(seen));
  const [low = 0, high = 0] = meanQuantiles(seen, most, [0.1, 0.9]);
  const likeliest = likeliestMean(seen);
  const mean = likeliest ?? meanWithChance(seen, most, 0.5);
  const least = likeliest === null ? meanWithChance(seen, most, 0.1) : low;
  const uncounted = seen.filter(({ kind }) => kind === "at least").length;
  return {
    sessions: sessions.length,
    full: sessions.filter(({ heads, capacity }) => heads === capacity).length,
    uncounted,
    meanHeads: average(sessions.map(({ heads }) => heads)),
    mean,
    low: Math.min(least, mean),
    high: Math.max(high, mean),
    atLeast: uncounted > MOSTLY_FULL * sessions.length,
    turnedAway: turnedAwayAt(sessions, mean),
    turnedAwayLow: turnedAwayAt(sessions, Math.min(least, mean)),
    turnedAwayHigh: turnedAwayAt(sessions, Math.max(high, mean)),
    seen,
  };
}

/** The mean at which it has this chance that all sessions were full. */
function meanWithChance(seen: readonly SeenCount[], most: number, wanted: number): number {
  let low = 0;
  let high = most;
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    if (Math.exp(seenLogLikelihood(seen, middle)) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

function turnedAwayAt(sessions: readonly DatelessSession[], mean: number): number {
  return average(sessions.map(({ capacity }) => expectedOver({ kind: "poisson", mean }, capacity)));
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function counts(seen: readonly SeenCount[]): readonly number[] {
  return seen.map(({ count }) => count);
}
