import {
  type LearningEffort,
  learnedRoll,
  lookAhead,
  plateauOf,
  priorDraw,
  ratesOf,
  type RollDraw,
  type RollGuess,
  type RollQuestion,
  rollPrior,
  totalBand,
} from "#core/outlook";
import { simulateRoll } from "#testing";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { ownClock } from "./clock.ts";

export type YearSpeed = {
  readonly sessions: number;
  /** own time, median of the repeats, from the guesses to the bands of every session and of the whole year */
  readonly ms: number;
  /** how far mean and ends of the year's band are from 20,000 simulated years, in people, at most */
  readonly off: number;
  readonly peer: { readonly runs: number; readonly ms: number };
};

export type LearningSpeed = {
  readonly sessions: number;
  readonly ms: number;
  readonly draws: number;
  readonly effective: number;
  readonly peer: { readonly draws: number; readonly effective: number; readonly ms: number };
};

export type Coverage = CoverageQuestion & {
  readonly classes: number;
  readonly plateau: number;
  readonly heads: number;
  readonly newcomers: number;
};

/** So many sessions are recorded, with or without a count of the newcomers. */
export type CoverageQuestion = { readonly recorded: number; readonly counted: boolean };

const guess: RollGuess = { newcomers: 1.2, stays: 0.4, attends: 0.65, leaves: 0.02, onRoll: null };
const ALIKE = 4;
const CAPACITY = 14;
const REPEATS = 15;

/** A year's band for one class that is only guessed, and plain simulation until its own error is as small as ours. */
export function measureYear(): YearSpeed {
  const sessions = 44;
  const asked = questionOf([]);
  const ahead = level(sessions);
  const ms = medianMs(() => totalBand(lookAhead(asked, learnedRoll(asked, 1).sample, ahead).totals));
  // for one known rate the truth can be had by simulation
  const rates: RollDraw = { ...guess, onRoll: 0 };
  const ours = totalBand(lookAhead(asked, [rates], ahead).totals);
  const reference = simulatedTotals(rates, sessions, 20_000, 44);
  const ends = [0.1, 0.9].map((share) => reference[Math.floor(share * reference.length)] ?? 0);
  const mean = average(reference);
  const off = Math.max(
    Math.abs(ours.mean - mean),
    Math.abs(ours.low - (ends[0] ?? 0)),
    Math.abs(ours.high - (ends[1] ?? 0)),
  );
  // the end of a band of eight of ten from n runs is off by 1.71 σ ÷ √n
  const deviation = Math.sqrt(average(reference.map((it) => (it - mean) ** 2)));
  const runs = Math.max(100, Math.min(20_000, Math.ceil(((1.71 * deviation) / off) ** 2)));
  const began = ownClock();
  simulatedTotals(rates, sessions, runs, 45);
  return { sessions, ms, off, peer: { runs, ms: ownClock() - began } };
}

/** Learning from forty sessions, and the prior's own draws weighted until they are worth as many. */
export function measureLearning(): LearningSpeed {
  const asked = questionOf(simulatedHeads({ ...guess, onRoll: 0 }, 40, 40));
  const found = learnedRoll(asked, 1);
  const ms = medianMs(() => learnedRoll(asked, 1));
  const peer = priorAlone(asked, found.effective);
  return { sessions: 40, ms, draws: found.draws, effective: found.effective, peer };
}

// beyond this many draws of the prior the peer is told as it stands
const MOST_DRAWS = 40_000;

function priorAlone(asked: RollQuestion, wanted: number): LearningSpeed["peer"] {
  for (let each = 1000; ; each *= 2) {
    const effort: LearningEffort = { each, wanted, rounds: 1, sample: 1 };
    const began = ownClock();
    const { effective, draws } = learnedRoll(asked, 1, effort);
    const ms = ownClock() - began;
    if (effective >= wanted || each >= MOST_DRAWS) return { draws, effective, ms };
  }
}

/** How often the bands of eight of ten hold on simulated classes. */
export function measureCoverage(classes: number, asked: CoverageQuestion, seed: number): Coverage {
  const { recorded, counted } = asked;
  const coming = 24;
  const random = xoroshiro128plus(seed);
  const prior = rollPrior(guess);
  const held = { plateau: 0, heads: 0, newcomers: 0 };
  for (let each = 0; each < classes; each += 1) {
    const point = Array.from({ length: 4 }, () => uniformFloat64(random));
    const truth = ratesOf(priorDraw(prior, point));
    const seasons = Array.from({ length: recorded + coming }, () => 1);
    const run = simulateRoll({ ...truth, alike: ALIKE, seasons }, random);
    const heads = run.map(({ demand }) => Math.min(demand, CAPACITY));
    const newcomers = run.map((it) => (counted ? Math.min(it.newcomers, CAPACITY) : null));
    const question = questionOf(heads.slice(0, recorded), newcomers);
    const learned = learnedRoll(question, seed + each);
    const band = totalBand(lookAhead(question, learned.sample, level(coming)).totals);
    const total = heads.slice(recorded).reduce((sum, count) => sum + count, 0);
    const plateau = plateauOf(truth, ALIKE);
    if (within(learned.plateau, plateau)) held.plateau += 1;
    if (within(learned.rates.newcomers, truth.newcomers)) held.newcomers += 1;
    if (within(band, total)) held.heads += 1;
  }
  return {
    ...asked,
    classes,
    plateau: held.plateau / classes,
    heads: held.heads / classes,
    newcomers: held.newcomers / classes,
  };
}

function within({ low, high }: { readonly low: number; readonly high: number }, value: number): boolean {
  return low <= value && value <= high;
}

function questionOf(heads: readonly number[], newcomers: readonly (number | null)[] = []): RollQuestion {
  return {
    guess,
    alike: ALIKE,
    before: [],
    record: {
      seen: heads.map((count, at) => ({
        kind: count >= CAPACITY ? "at least" : "exact",
        count: count - (newcomers[at] ?? 0),
      })),
      newcomers: heads.map((_, at) => newcomers[at] ?? null),
      seasons: heads.map(() => 1),
    },
  };
}

function level(sessions: number) {
  return Array.from({ length: sessions }, () => ({ season: 1, capacity: CAPACITY }));
}

function simulatedHeads(rates: RollDraw, sessions: number, seed: number): readonly number[] {
  const seasons = Array.from({ length: sessions }, () => 1);
  const random = xoroshiro128plus(seed);
  return simulateRoll({ ...rates, alike: ALIKE, seasons }, random).map((it) => Math.min(it.demand, CAPACITY));
}

/** The heads of whole years, in order. */
function simulatedTotals(rates: RollDraw, sessions: number, runs: number, seed: number): readonly number[] {
  const random = xoroshiro128plus(seed);
  const seasons = Array.from({ length: sessions }, () => 1);
  return Array.from({ length: runs }, () =>
    simulateRoll({ ...rates, alike: ALIKE, seasons }, random).reduce(
      (sum, it) => sum + Math.min(it.demand, CAPACITY),
      0,
    ),
  ).sort((one, other) => one - other);
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function medianMs(run: () => unknown): number {
  // the first runs warm the machine up
  for (let step = 0; step < 5; step += 1) run();
  const times = Array.from({ length: REPEATS }, () => {
    const began = ownClock();
    run();
    return ownClock() - began;
  }).sort((one, other) => one - other);
  return times[Math.floor(REPEATS / 2)] ?? 0;
}
