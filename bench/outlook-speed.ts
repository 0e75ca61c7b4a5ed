import {
  type LearningEffort,
  learnedRoll,
  lookAhead,
  type RollDraw,
  type RollQuestion,
  totalBand,
} from "#core/outlook";
import { simulateRoll } from "#testing";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { ownClock } from "./clock.ts";
import { ALIKE, CAPACITY, guess, level, questionOf } from "./outlook-scene.ts";

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

const REPEATS = 15;

/** A year's band for one class that is only guessed, and plain simulation until its own error is as small as ours. */
export function measureYear(): YearSpeed {
  const sessions = 44;
  const asked = questionOf([]);
  const ahead = level(sessions);
  const ms = medianMs(() => totalBand(lookAhead(asked, learnedRoll(asked, 1).sample, ahead).totals));
  // for one known rate the truth can be had by simulation
  const rates: RollDraw = { ...guess, onRoll: 0, echo: 0, luck: 0.15 };
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
  const asked = questionOf(simulatedHeads({ ...guess, onRoll: 0, echo: 0, luck: 0.15 }, 40, 40));
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
