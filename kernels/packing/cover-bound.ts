import { type CoverGrid, coveredBy, coverGrid, greatestOf, loadOf, sumOf } from "./cover-sums.ts";
import { mendWeights } from "./mend-weights.ts";
import type { Reaches } from "./reach-of.ts";

/**
 * Weights on the points such that every block weighs at least one would prove that no more rectangles fit than all
 * weights together: each takes a block of its own. This looks for the least such weights, and at the same time for
 * the fractions of rectangles that weigh against them, by a primal-dual method whose steps are drawn back towards
 * where they began. Sums over blocks are taken by running totals, so a round costs one look at each block and each
 * point.
 */
export type Cover = CoverGrid & {
  readonly pace: Float64Array;
  readonly pull: Float64Array;
  /** where the method stands, where it last began again, and where its next step leads from where it stands */
  readonly now: Stand;
  readonly anchor: Stand;
  readonly next: Stand;
  readonly overshot: Float64Array;
  readonly load: Float64Array;
  /** how much bolder steps of shares are than steps of weights */
  boldness: number;
  rounds: number;
  sinceRestart: number;
  /** length of the first step since the last restart, and of the last one measured */
  firstStep: number;
  lastStep: number;
  nextLook: number;
  /** the bound speaks of plans of more than so many only: places that no such plan can use may be left out */
  readonly spared: number;
  /** proven: no more than this many fit, not yet rounded down, or no more than are spared */
  bound: number;
  /** what the fractions reach: the bound cannot come below this on these points */
  floor: number;
  /** the weights that prove the bound, scaled so that every block weighs at least one */
  bestWeights: Float64Array;
};

/** Fractions of rectangles, weights of points, and what each block weighs by them. */
export type Stand = {
  readonly shares: Float64Array;
  readonly weights: Float64Array;
  readonly covered: Float64Array;
};

/**
 * Begins from nothing: what weights on other points of the same floor came to is no help, moved to the nearest points
 * of this they were measured to cost rounds.
 */
export function startCover(reaches: Reaches): Cover {
  const grid = coverGrid(reaches);
  const { size } = reaches;
  const stand = (): Stand => ({
    shares: new Float64Array(size),
    weights: new Float64Array(grid.points),
    covered: new Float64Array(size),
  });
  return {
    ...grid,
    ...pacesOf(grid),
    now: stand(),
    anchor: stand(),
    next: stand(),
    overshot: new Float64Array(size),
    load: new Float64Array(grid.points),
    boldness: 1,
    rounds: 0,
    sinceRestart: 0,
    firstStep: Infinity,
    lastStep: Infinity,
    nextLook: 40,
    spared: 0,
    bound: size === 0 ? 0 : Infinity,
    floor: 0,
    bestWeights: new Float64Array(grid.points),
  };
}

/** Step lengths by the number of points in a block and of blocks over a point (Pock and Chambolle 2011). */
function pacesOf(grid: CoverGrid): Pick<Cover, "pace" | "pull"> {
  const { blocks, size } = grid.reaches;
  const pace = new Float64Array(size);
  for (let i = 0; i < size; i++)
    pace[i] = 1 / ((blocks[4 * i + 1]! - blocks[4 * i]!) * (blocks[4 * i + 3]! - blocks[4 * i + 2]!));
  const pull = loadOf(grid, new Float64Array(size).fill(1), new Float64Array(grid.points));
  for (let i = 0; i < pull.length; i++) pull[i] = pull[i]! > 0.5 ? 1 / pull[i]! : 0;
  return { pace, pull };
}

/** Rounds between two measurements of a step. */
const MEASURE = 8;
/** Looks at what is proven grow apart: each costs some thirty rounds. */
const LOOKS_APART = 1.3;

export function coverRounds(cover: Cover, rounds: number): void {
  if (cover.reaches.size === 0) return;
  for (let round = 0; round < rounds; round++) {
    step(cover);
    if (cover.rounds >= cover.nextLook) look(cover);
    if (isTimeToRestart(cover)) {
      setBoldness(cover);
      beginAt(cover, cover.next);
    } else drawBack(cover);
  }
}

/** From where the method stands to `next`: shares up where blocks are light, weights up where points are crowded. */
function step(cover: Cover): void {
  const { now, next, pace, pull, overshot, load, boldness } = cover;
  for (let i = 0; i < overshot.length; i++) {
    const before = now.shares[i]!;
    const wish = before + boldness * pace[i]! * (1 - now.covered[i]!);
    const share = wish > 0 ? wish : 0;
    overshot[i] = 2 * share - before;
    next.shares[i] = share;
  }
  loadOf(cover, overshot, load);
  for (let i = 0; i < load.length; i++) {
    const wish = now.weights[i]! + (pull[i]! / boldness) * (load[i]! - 1);
    next.weights[i] = wish > 0 ? wish : 0;
  }
  coveredBy(cover, next.weights, next.covered);
  cover.rounds++;
  cover.sinceRestart++;
}

/** Twice the step, then a little back to the anchor, less each time (Halpern 1967; Lu and Yang 2024). */
function drawBack({ now, next, anchor, sinceRestart }: Cover): void {
  const on = sinceRestart / (sinceRestart + 1);
  for (const part of ["shares", "weights", "covered"] as const) {
    const [at, to, from] = [now[part], next[part], anchor[part]];
    for (let i = 0; i < at.length; i++) at[i] = on * (2 * to[i]! - at[i]!) + (1 - on) * from[i]!;
  }
}

/** Begins again at such a stand. */
export function beginAt(cover: Cover, { shares, weights, covered }: Stand): void {
  for (const stand of [cover.now, cover.anchor]) {
    stand.shares.set(shares);
    stand.weights.set(weights);
    stand.covered.set(covered);
  }
  cover.sinceRestart = 0;
}

/** When steps have become a fifth as long, or four fifths and longer again, or for a third of all rounds nothing came. */
function isTimeToRestart(cover: Cover): boolean {
  const { sinceRestart, rounds } = cover;
  if (sinceRestart !== 1 && sinceRestart % MEASURE !== 0) return false;
  const length = stepLength(cover);
  const before = cover.lastStep;
  cover.lastStep = length;
  if (sinceRestart === 1) {
    cover.firstStep = length;
    return false;
  }
  return (
    length <= 0.2 * cover.firstStep ||
    (length <= 0.8 * cover.firstStep && length > before) ||
    sinceRestart >= 0.36 * rounds
  );
}

/** In the measure in which the method never moves away from its goal. */
function stepLength({ now, next, pace, pull, boldness }: Cover): number {
  let [shares, weights, both] = [0, 0, 0];
  for (let i = 0; i < pace.length; i++) {
    const by = next.shares[i]! - now.shares[i]!;
    shares += (by * by) / pace[i]!;
    both += by * (next.covered[i]! - now.covered[i]!);
  }
  for (let i = 0; i < pull.length; i++) {
    const by = next.weights[i]! - now.weights[i]!;
    if (pull[i]! > 0) weights += (by * by) / pull[i]!;
  }
  return Math.sqrt(Math.max(0, shares / boldness + weights * boldness + 2 * both));
}

/** So that both sides have about as far to go, half-way from what it was. */
function setBoldness(cover: Cover): void {
  const { next, anchor, pace, pull } = cover;
  let [shares, weights] = [0, 0];
  for (let i = 0; i < pace.length; i++) shares += (next.shares[i]! - anchor.shares[i]!) ** 2 / pace[i]!;
  for (let i = 0; i < pull.length; i++)
    if (pull[i]! > 0) weights += (next.weights[i]! - anchor.weights[i]!) ** 2 / pull[i]!;
  if (shares > 1e-12 && weights > 1e-12)
    cover.boldness = Math.sqrt(cover.boldness * Math.sqrt(shares / weights));
}

/** Keeps the bound that the weights prove, and the value that the shares reach. */
function look(cover: Cover): void {
  const { next, load, rounds } = cover;
  cover.nextLook = Math.ceil(rounds * LOOKS_APART) + 20;
  const mended = mendWeights(cover, next.weights, next.covered);
  if (mended.bound < cover.bound) {
    cover.bound = mended.bound;
    cover.bestWeights = mended.weights;
  }
  const most = greatestOf(loadOf(cover, next.shares, load));
  if (most > 0) cover.floor = Math.max(cover.floor, sumOf(next.shares) / most);
}
