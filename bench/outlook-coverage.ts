import { learnedRoll, lookAhead, plateauOf, priorDraw, ratesOf, rollPrior, totalBand } from "#core/outlook";
import { simulateRoll } from "#testing";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { ALIKE, CAPACITY, guess, level, questionOf } from "./outlook-scene.ts";

/** What is simulated and recorded of each class. */
export type CoverageQuestion = {
  readonly recorded: number;
  readonly counted: boolean;
  /** people expected to an opening; 0 is a class that begins with an ordinary week */
  readonly opening: number;
  /** the spread of the luck of evenings; null is drawn about the guess */
  readonly luck: number | null;
  /** whether the answer reckons with luck */
  readonly reckoned: boolean;
};

export type Coverage = CoverageQuestion & {
  readonly classes: number;
  readonly plateau: number;
  readonly heads: number;
  /** of single evenings; a band of whole people holds somewhat more than eight of ten */
  readonly evenings: number;
  readonly newcomers: number;
};

/** How often the bands of eight of ten hold on simulated classes. */
export function measureCoverage(classes: number, asked: CoverageQuestion, seed: number): Coverage {
  const { recorded, counted, opening, luck, reckoned } = asked;
  const coming = 24;
  const random = xoroshiro128plus(seed);
  const prior = rollPrior(guess);
  const held = { plateau: 0, heads: 0, evenings: 0, newcomers: 0 };
  for (let each = 0; each < classes; each += 1) {
    const point = Array.from({ length: prior.dimensions }, () => uniformFloat64(random));
    const truth = ratesOf(prior, priorDraw(prior, point));
    const seasons = Array.from({ length: recorded + coming }, () => 1);
    const opened = opening === 0 ? {} : { opening: { people: opening, echo: truth.echo } };
    const run = simulateRoll(
      { ...truth, ...opened, luck: luck ?? truth.luck, alike: ALIKE, seasons },
      random,
    );
    const heads = run.map(({ demand }) => Math.min(demand, CAPACITY));
    const newcomers = run.map((it) => (counted ? Math.min(it.newcomers, CAPACITY) : null));
    const told = questionOf(heads.slice(0, recorded), newcomers);
    const question = reckoned ? told : { ...told, guess: { ...guess, luck: null } };
    const learned = learnedRoll(question, seed + each);
    const { totals, sessions } = lookAhead(question, learned.sample, level(coming));
    const band = totalBand(totals);
    const later = heads.slice(recorded);
    const total = later.reduce((sum, count) => sum + count, 0);
    const plateau = plateauOf(truth, ALIKE);
    if (within(learned.plateau, plateau)) held.plateau += 1;
    if (within(learned.rates.newcomers, truth.newcomers)) held.newcomers += 1;
    if (within(band, total)) held.heads += 1;
    held.evenings += sessions.filter((it, at) => within(it, later[at] ?? 0)).length / coming;
  }
  return {
    ...asked,
    classes,
    plateau: held.plateau / classes,
    heads: held.heads / classes,
    evenings: held.evenings / classes,
    newcomers: held.newcomers / classes,
  };
}

function within({ low, high }: { readonly low: number; readonly high: number }, value: number): boolean {
  return low <= value && value <= high;
}
