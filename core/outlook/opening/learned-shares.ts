import { betaQuantile } from "#kernels/statistics";
import type { Together } from "./turn-up.ts";

/** Accepted, came, and of those who came, came again. */
export type Happened = {
  readonly accepted: number;
  readonly came: number;
  readonly returned: number | null;
};

export type LearnedShare = {
  /** of the Beta posterior */
  readonly a: number;
  readonly b: number;
  readonly mean: number;
  /** eight chances of ten lie between them */
  readonly low: number;
  readonly high: number;
};

/** A share that was guessed weighs as much as this many people who were seen: a planning assumption. */
export const GUESS_WEIGHS = 10;

/**
 * A guessed share after so many of so many were seen: the posterior Beta(g·w + seen, (1 − g)·w + others), where w
 * people stand for the guess. 0.6 weighing ten, then 15 of 20: Beta(21, 9), mean 0.7.
 */
export function learnedShare(guess: number, seen: number, of: number, weight = GUESS_WEIGHS): LearnedShare {
  // a guess of nought or all would never be moved; a twentieth of a person leaves it open
  const firm = Math.min(Math.max(guess, 0.005), 0.995);
  const a = firm * weight + seen;
  const b = (1 - firm) * weight + of - seen;
  return { a, b, mean: a / (a + b), low: betaQuantile(0.1, a, b), high: betaQuantile(0.9, a, b) };
}

/**
 * People who come and stay away together tell less than as many alone: n of them with correlation ρ as much as
 * n ÷ (1 + (n − 1)ρ), and with P known pairs among them as much as n² ÷ (n + 2P): the variance decides.
 */
export function asMuchAs(people: number, together: Together): number {
  switch (together.kind) {
    case "alone":
      return people;
    case "alike":
      return people <= 1 ? people : people / (1 + (people - 1) * together.correlation);
    case "pairs":
      return people === 0 ? 0 : people ** 2 / (people + 2 * Math.min(together.pairs, people / 2));
  }
}
