import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

/** The rates of a class and its sessions' seasons, as the outlook has them; person by person, with no formula. */
export type SimulatedRoll = {
  readonly newcomers: number;
  readonly stays: number;
  readonly attends: number;
  readonly leaves: number;
  /** d ~ Beta(alike, alike · (1 − d) ÷ d); null: all the same */
  readonly alike: number | null;
  readonly seasons: readonly number[];
  /** regulars before the first session, all new ones */
  readonly before?: number;
  /** the spread of a luck about 1 that all people of one session share */
  readonly luck?: number;
  /** a first session to which so many are expected, and after it so many more newcomers for each who came */
  readonly opening?: { readonly people: number; readonly echo: number };
};

export type SimulatedSession = { readonly demand: number; readonly newcomers: number };

/** How many want to come to each session, and who of them is new: every person decides for herself. */
export function simulateRoll(roll: SimulatedRoll, random: RandomGenerator): readonly SimulatedSession[] {
  let regulars: readonly number[] = Array.from({ length: roll.before ?? 0 }, () => leavingOf(roll, random));
  let opened = 0;
  return roll.seasons.map((season, at) => {
    const luck = luckOf(roll.luck ?? 0, random);
    const coming = Math.min(1, roll.attends * season * luck);
    const came = regulars.filter(() => uniformFloat64(random) < coming).length;
    const newcomers = poissonDraw(luck * expectedNewcomers(roll, season, at, opened), random);
    if (at === 0) opened = newcomers;
    const staying = Array.from({ length: newcomers }, () => uniformFloat64(random) < roll.stays);
    const joining = staying.filter(Boolean).map(() => leavingOf(roll, random));
    // who is still there a week later
    regulars = [...regulars, ...joining].filter((leaving) => uniformFloat64(random) >= leaving);
    return { demand: came + newcomers, newcomers };
  });
}

/** All of the first session came for the opening; of the second and the third some did. */
function expectedNewcomers(
  { newcomers, opening }: SimulatedRoll,
  season: number,
  at: number,
  opened: number,
): number {
  if (opening === undefined) return newcomers * season;
  if (at === 0) return opening.people;
  return newcomers * season + (at > 2 ? 0 : (opened * opening.echo) / at);
}

/** Gamma about 1; the draws above take shapes from 1, a spread of 1 at most. */
function luckOf(spread: number, random: RandomGenerator): number {
  return spread === 0 ? 1 : gammaDraw(spread ** -2, random) * spread ** 2;
}

/** The weekly chance to stop of one person: Beta(a, b) with a whole a, as the share of two sums of waiting times. */
function leavingOf({ leaves, alike }: SimulatedRoll, random: RandomGenerator): number {
  if (alike === null) return leaves;
  const stop = gammaDraw(alike, random);
  return stop / (stop + gammaDraw((alike * (1 - leaves)) / leaves, random));
}

/** Marsaglia and Tsang, A simple method for generating gamma variables, ACM TOMS 26 (2000); shape from 1. */
function gammaDraw(shape: number, random: RandomGenerator): number {
  const d = shape - 1 / 3;
  for (;;) {
    const z = normalDraw(random);
    const v = (1 + z / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - uniformFloat64(random)) < (z * z) / 2 + d * (1 - v + Math.log(v))) return d * v;
  }
}

function normalDraw(random: RandomGenerator): number {
  const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(random)));
  return radius * Math.cos(2 * Math.PI * uniformFloat64(random));
}

function poissonDraw(mean: number, random: RandomGenerator): number {
  const limit = Math.exp(-mean);
  let count = 0;
  for (let product = 1 - uniformFloat64(random); product > limit; count += 1) {
    product *= 1 - uniformFloat64(random);
  }
  return count;
}
