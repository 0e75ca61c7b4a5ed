import {
  type KeepAdvice,
  keepOrClose,
  lookAhead,
  learnedRoll,
  levelled,
  priorDraw,
  ratesOf,
  type RollDraw,
  type RollGuess,
  type RollQuestion,
  rollPrior,
  rollRecord,
  seasonOf,
  USUAL_SEASON,
} from "#core/outlook";
import { normalQuantile } from "#kernels/statistics";
import { simulateRoll } from "#testing";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { type ClassRun, type Rule, rules } from "./outlook-rules.ts";

/** A class in a hall that is charged by the session, over two teaching years; amounts in pounds. */
const scene = {
  sessions: 80,
  capacity: 14,
  margin: 7.7,
  cost: 31,
  exitCost: 25,
  /** sessions between two dates on which notice can be given, at every half-term, and until it takes effect */
  noticeEvery: 6,
  noticeFor: 4,
  term: 12,
  alike: 4,
} as const;

/** What she guesses: trade's planning figures. */
const guess: RollGuess = {
  newcomers: 1,
  stays: 0.4,
  attends: 0.65,
  leaves: 0.02,
  onRoll: null,
  echo: 0.15,
  luck: 0.15,
};

/** Months of 40 teaching weeks from September; closed at Christmas, Easter and in August. */
const autumn = [9, 9, 9, 9, 10, 10, 10, 10, 11, 11, 11, 11, 12, 12, 1, 1, 1, 1, 2, 2];
const spring = [2, 3, 3, 3, 3, 4, 4, 5, 5, 5, 5, 6, 6, 6, 6, 6, 7, 7, 7, 7];
const months: readonly number[] = [...autumn, ...spring];

const season = levelled(USUAL_SEASON);
const monthOf = (session: number): number => months[session % months.length] ?? 9;
const seasons = Array.from({ length: scene.sessions }, (_, at) => seasonOf(season, monthOf(at)));

export type Regret = {
  readonly rule: string;
  /** pounds a class that the rule leaves, and how much less than knowing the rates from the start */
  readonly leaves: number;
  readonly regret: number;
  readonly standardError: number;
  /** classes closed within the two years, and of those that would have paid */
  readonly closed: number;
  readonly closedWrongly: number;
};

/** How the simulated classes differ from what she guesses and the model knows. */
export type World = {
  readonly name: string;
  /** multiplies the newcomers that her guess promises */
  readonly newcomers: number;
  /** people expected to an opening; 0 is a class that begins with an ordinary week */
  readonly opening: number;
  /** the spread of a luck that all people of one evening share, lognormal; null is Gamma and drawn about the guess */
  readonly weather: number | null;
};

export const worlds: readonly World[] = [
  { name: "as she guessed", newcomers: 1, opening: 0, weather: null },
  { name: "half the newcomers", newcomers: 0.5, opening: 0, weather: null },
  { name: "half the newcomers, open to ten", newcomers: 0.5, opening: 10, weather: null },
  { name: "as she guessed, with much weather", newcomers: 1, opening: 0, weather: 0.3 },
];

/** The rules on the same simulated classes of a world. */
export function measureRegret(classes: number, seed: number, world: World): readonly Regret[] {
  const random = xoroshiro128plus(seed);
  const runs = Array.from({ length: classes }, (_, at) => simulatedClass(random, world, seed + at));
  return rules.map((rule) => regretOf(rule, runs));
}

function simulatedClass(random: RandomGenerator, world: World, seed: number): ClassRun {
  const prior = rollPrior(guess);
  const point = Array.from({ length: prior.dimensions }, () => uniformFloat64(random));
  const drawn = ratesOf(prior, priorDraw(prior, point));
  const truth = { ...drawn, newcomers: drawn.newcomers * world.newcomers };
  // the rules know the season, not the weather
  const { weather } = world;
  const felt = weather === null ? seasons : seasons.map((each) => each * luckOf(weather, random));
  const opened = world.opening === 0 ? {} : { opening: { people: world.opening, echo: truth.echo } };
  const luck = weather === null ? truth.luck : 0;
  const rates = { ...truth, ...opened, luck, alike: scene.alike, seasons: felt };
  const demand = simulateRoll(rates, random).map((it) => it.demand);
  const heads = demand.map((count) => Math.min(count, scene.capacity));
  const expected = expectedHeads(truth, world.opening > 0 ? (heads[0] ?? 0) : null);
  return {
    heads,
    contributions: heads.map((count) => count * scene.margin - scene.cost),
    expected: expected.map((count) => count * scene.margin - scene.cost),
    looks: looksOf(heads, seed),
  };
}

/** A factor about 1, lognormal with this spread. */
function luckOf(spread: number, random: RandomGenerator): number {
  const normal = normalQuantile(Math.max(uniformFloat64(random), 1e-12));
  return Math.exp(spread * normal - spread ** 2 / 2);
}

/** For each date of notice, what the product would say; worked out only for those who ask. */
function looksOf(heads: readonly number[], seed: number): ClassRun["looks"] {
  return heads.map((_, at) => {
    const held = at + 1;
    const ends = held + scene.noticeFor;
    if (held % scene.noticeEvery !== 0 || ends >= scene.sessions) return null;
    return () => lookedAt(heads.slice(0, held), seed);
  });
}

const EFFORT = { each: 150, wanted: 80, rounds: 5, sample: 32 };
const BREAK_EVEN = Math.ceil(scene.cost / scene.margin);

function lookedAt(heads: readonly number[], seed: number): KeepAdvice {
  const held = heads.length;
  const asked = questionOf(heads);
  const learned = learnedRoll(asked, seed, EFFORT);
  const ahead = seasons
    .slice(held, held + scene.noticeFor + scene.term)
    .map((each) => ({ season: each, capacity: scene.capacity }));
  const term = lookAhead(asked, learned.sample, ahead).sessions.slice(scene.noticeFor);
  const plateauChance = learned.drawn.reduce(
    (sum, { plateau, weight }) => sum + (plateau >= BREAK_EVEN ? weight : 0),
    0,
  );
  const goingOn = term.reduce((sum, { mean }) => sum + mean * scene.margin - scene.cost, 0);
  const intakeSeen = heads.some((_, at) => monthOf(at) === 1 || monthOf(at) === 9);
  const known = { sessionsHeld: held, intakeSeen, canPay: true, plateauChance, goingOn };
  return keepOrClose({ ...known, otherUse: 0, exitCost: scene.exitCost });
}

/** By the rates alone, and who came to the opening where there was one. */
function expectedHeads(truth: RollDraw, opened: number | null): readonly number[] {
  const known = opened === null ? [] : [opened];
  const ahead = seasons.slice(known.length).map((each) => ({ season: each, capacity: scene.capacity }));
  return [...known, ...lookAhead(questionOf(known), [truth], ahead).sessions.map(({ mean }) => mean)];
}

/** A new class with these heads, where nobody counts newcomers. */
function questionOf(heads: readonly number[]): RollQuestion {
  const held = heads.map((count) => ({
    heads: count,
    capacity: scene.capacity,
    turnedAway: null,
    waiting: null,
    newcomers: null,
  }));
  const record = rollRecord(held, seasons.slice(0, heads.length), "new");
  return { guess, alike: scene.alike, before: [], record };
}

function regretOf({ name, closesAfter }: Rule, runs: readonly ClassRun[]): Regret {
  const found = runs.map((run) => {
    const stop = closesAfter(run, BREAK_EVEN);
    const best = bestStop(run);
    return {
      leaves: leftBy(run.contributions, stop),
      regret: leftBy(run.contributions, best) - leftBy(run.contributions, stop),
      closed: stop !== null,
      wrongly: stop !== null && best === null,
    };
  });
  const mean = (of: (it: (typeof found)[number]) => number): number =>
    found.reduce((sum, it) => sum + of(it), 0) / found.length;
  const regret = mean((it) => it.regret);
  const variance = mean((it) => (it.regret - regret) ** 2);
  return {
    rule: name,
    leaves: mean((it) => it.leaves),
    regret,
    standardError: Math.sqrt(variance / found.length),
    closed: mean((it) => (it.closed ? 1 : 0)),
    closedWrongly: mean((it) => (it.wrongly ? 1 : 0)),
  };
}

/** What all sessions leave when notice is given after so many of them; never: null. */
function leftBy(contributions: readonly number[], stop: number | null): number {
  const until = stop === null ? contributions.length : Math.min(contributions.length, stop + scene.noticeFor);
  const sum = contributions.slice(0, until).reduce((total, each) => total + each, 0);
  return stop === null ? sum : sum - scene.exitCost;
}

/** By somebody who knows the rates, but not the luck: the date of notice with the greatest expectation. */
function bestStop({ expected }: ClassRun): number | null {
  const dates = expected.flatMap((_, at) => ((at + 1) % scene.noticeEvery === 0 ? [at + 1] : []));
  return dates.reduce<number | null>(
    (best, date) => (leftBy(expected, date) > leftBy(expected, best) ? date : best),
    null,
  );
}
