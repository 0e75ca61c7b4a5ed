import { firstPast, type Reaches } from "./reach-of.ts";

/**
 * Weights on the points such that every block weighs at least one would prove that no more rectangles fit than all
 * weights together: each takes a block of its own. This looks for the least such weights, and at the same time for
 * the fractions of rectangles that weigh against them, by a primal-dual method with averaging and restarts.
 * Sums over blocks are taken by running totals, so a round costs one look at each block and each point.
 */
export type Cover = {
  readonly reaches: Reaches;
  /** points in a row of the grid, one more for the running totals */
  readonly stride: number;
  readonly corners: Corners;
  readonly pace: Float64Array;
  readonly pull: Float64Array;
  readonly shares: Float64Array;
  readonly weights: Float64Array;
  readonly sumShares: Float64Array;
  readonly sumWeights: Float64Array;
  readonly covered: Float64Array;
  readonly scratch: Scratch;
  rounds: number;
  sinceRestart: number;
  lastGap: number;
  /** proven: no more than this many fit, not yet rounded down */
  bound: number;
  /** what the fractions reach: the bound cannot come below this on these points */
  floor: number;
  /** the weights that prove the bound, scaled so that every block weighs at least one */
  bestWeights: Float64Array;
};

type Corners = {
  readonly lowLeft: Int32Array;
  readonly lowRight: Int32Array;
  readonly highLeft: Int32Array;
  readonly highRight: Int32Array;
};
type Scratch = {
  readonly totals: Float64Array;
  readonly load: Float64Array;
  readonly overshot: Float64Array;
  readonly meanShares: Float64Array;
  readonly meanWeights: Float64Array;
};

/** Begins from nothing, or from where the search on other points of the same floor has come. */
export function startCover(reaches: Reaches, before: Cover | null = null): Cover {
  const stride = reaches.ys.length + 1;
  const points = (reaches.xs.length + 1) * stride;
  const { size } = reaches;
  const cover: Cover = {
    reaches,
    stride,
    corners: cornersOf(reaches, stride),
    pace: new Float64Array(size),
    pull: new Float64Array(points),
    shares: new Float64Array(size),
    weights: new Float64Array(points),
    sumShares: new Float64Array(size),
    sumWeights: new Float64Array(points),
    covered: new Float64Array(size),
    scratch: {
      totals: new Float64Array(points),
      load: new Float64Array(points),
      overshot: new Float64Array(size).fill(1),
      meanShares: new Float64Array(size),
      meanWeights: new Float64Array(points),
    },
    rounds: 0,
    sinceRestart: 0,
    lastGap: Infinity,
    bound: size === 0 ? 0 : Infinity,
    floor: 0,
    bestWeights: new Float64Array(points),
  };
  setPaces(cover);
  if (before !== null) takeOver(cover, before);
  return cover;
}

function cornersOf({ blocks, size }: Reaches, stride: number): Corners {
  const at = (x: 0 | 1, y: 2 | 3): Int32Array =>
    Int32Array.from({ length: size }, (_, i) => blocks[4 * i + x]! * stride + blocks[4 * i + y]!);
  return { lowLeft: at(0, 2), lowRight: at(1, 2), highLeft: at(0, 3), highRight: at(1, 3) };
}

/** Each weight goes to the nearest point and each share to the reach at the same place, where there is one. */
function takeOver(cover: Cover, before: Cover): void {
  const { reaches, stride, weights, shares } = cover;
  const columns = before.reaches.xs.map((x) => nearest(reaches.xs, x));
  const rows = before.reaches.ys.map((y) => nearest(reaches.ys, y));
  for (const [x, column] of columns.entries())
    for (const [y, row] of rows.entries())
      weights[column * stride + row]! += before.bestWeights[x * before.stride + y]!;
  const known = new Map<string, number>();
  for (let i = 0; i < before.reaches.size; i++)
    if (before.shares[i]! > 0) known.set(placeOf(before.reaches, i), before.shares[i]!);
  for (let i = 0; i < reaches.size; i++) shares[i] = known.get(placeOf(reaches, i)) ?? 0;
  coveredBy(cover, weights, cover.covered);
}

function nearest(sorted: readonly number[], value: number): number {
  const above = Math.min(sorted.length - 1, firstPast(sorted, value));
  return above > 0 && value - sorted[above - 1]! < sorted[above]! - value ? above - 1 : above;
}

function placeOf({ turns, lefts, lows }: Reaches, index: number): string {
  return `${turns[index]} ${Math.round(lefts[index]! * 100)} ${Math.round(lows[index]! * 100)}`;
}

/** Step lengths by the number of points in a block and of blocks over a point (Pock and Chambolle 2011). */
function setPaces({ reaches, scratch, pace, pull, ...cover }: Cover): void {
  const { blocks, size } = reaches;
  for (let i = 0; i < size; i++)
    pace[i] = 1 / ((blocks[4 * i + 1]! - blocks[4 * i]!) * (blocks[4 * i + 3]! - blocks[4 * i + 2]!));
  loadOf({ reaches, scratch, pace, pull, ...cover }, scratch.overshot, scratch.load);
  for (let i = 0; i < pull.length; i++) pull[i] = scratch.load[i]! > 0.5 ? 1 / scratch.load[i]! : 0;
}

/** Rounds between two looks at what is proven. */
const LOOK = 40;

export function coverRounds(cover: Cover, rounds: number): void {
  if (cover.reaches.size === 0) return;
  for (let round = 0; round < rounds; round++) {
    oneRound(cover);
    if (cover.rounds % LOOK === 0) look(cover);
  }
}

function oneRound(cover: Cover): void {
  const { shares, weights, covered, pace, pull, scratch, sumShares, sumWeights } = cover;
  const { overshot, load } = scratch;
  for (let i = 0; i < shares.length; i++) {
    const before = shares[i]!;
    const wish = before + pace[i]! * (1 - covered[i]!);
    const now = wish > 0 ? wish : 0;
    overshot[i] = 2 * now - before;
    shares[i] = now;
    sumShares[i]! += now;
  }
  loadOf(cover, overshot, load);
  for (let i = 0; i < weights.length; i++) {
    const wish = weights[i]! + pull[i]! * (load[i]! - 1);
    const now = wish > 0 ? wish : 0;
    weights[i] = now;
    sumWeights[i]! += now;
  }
  coveredBy(cover, weights, covered);
  cover.rounds++;
  cover.sinceRestart++;
}

/** Restart when the gap has halved, or after this share of all rounds without that. */
const PATIENCE = 0.36;

function look(cover: Cover): void {
  const { scratch, sumShares, sumWeights, sinceRestart, shares, weights } = cover;
  const { meanShares, meanWeights } = scratch;
  for (let i = 0; i < meanShares.length; i++) meanShares[i] = sumShares[i]! / sinceRestart;
  for (let i = 0; i < meanWeights.length; i++) meanWeights[i] = sumWeights[i]! / sinceRestart;
  const mean = judge(cover, meanShares, meanWeights);
  const last = judge(cover, shares, weights);
  const gap = Math.min(mean, last);
  if (gap >= 0.5 * cover.lastGap && sinceRestart < PATIENCE * cover.rounds + 200) return;
  if (mean < last) {
    shares.set(meanShares);
    weights.set(meanWeights);
    coveredBy(cover, weights, cover.covered);
  }
  sumShares.fill(0);
  sumWeights.fill(0);
  cover.sinceRestart = 0;
  cover.lastGap = gap;
}

/** Keeps the bound that the weights prove and the value that the shares reach; answers how far they are apart. */
function judge(cover: Cover, shares: Float64Array, weights: Float64Array): number {
  const { scratch, bestWeights } = cover;
  const total = sum(weights);
  const least = least0(coveredBy(cover, weights, scratch.overshot));
  const upper = least > 0 ? provenBy(total, least) : Infinity;
  if (upper < cover.bound) {
    cover.bound = upper;
    for (let i = 0; i < weights.length; i++) bestWeights[i] = weights[i]! / least;
  }
  const most = greatest(loadOf(cover, shares, scratch.load));
  const lower = most > 0 ? sum(shares) / most : 0;
  cover.floor = Math.max(cover.floor, lower);
  return lower > 0 ? upper / lower - 1 : Infinity;
}

/**
 * All weights over the least that a block weighs. Each sum has under a million terms of the same sign, so it is
 * wrong by less than 1e-9 of itself; both are taken at their worse end, and differences of totals are allowed
 * for by the same share of the whole.
 */
function provenBy(total: number, least: number): number {
  const doubt = 1e-12 * total + 1e-12;
  return (total + doubt) / (least - doubt > 0 ? least - doubt : Number.MIN_VALUE);
}

function coveredBy(
  { reaches, stride, corners, scratch }: Cover,
  weights: Float64Array,
  into: Float64Array,
): Float64Array {
  const { totals } = scratch;
  const [columns, rows] = [reaches.xs.length, reaches.ys.length];
  for (let x = 0; x < columns; x++) {
    const [here, next] = [x * stride, (x + 1) * stride];
    let run = 0;
    for (let y = 0; y < rows; y++) {
      run += weights[here + y]!;
      totals[next + y + 1] = totals[here + y + 1]! + run;
    }
  }
  const { lowLeft, lowRight, highLeft, highRight } = corners;
  for (let i = 0; i < reaches.size; i++)
    into[i] = totals[highRight[i]!]! - totals[lowRight[i]!]! - totals[highLeft[i]!]! + totals[lowLeft[i]!]!;
  return into;
}

function loadOf({ reaches, stride, corners }: Cover, shares: Float64Array, into: Float64Array): Float64Array {
  const { lowLeft, lowRight, highLeft, highRight } = corners;
  into.fill(0);
  for (let i = 0; i < reaches.size; i++) {
    const share = shares[i]!;
    if (share === 0) continue;
    into[lowLeft[i]!]! += share;
    into[lowRight[i]!]! -= share;
    into[highLeft[i]!]! -= share;
    into[highRight[i]!]! += share;
  }
  for (let x = 0; x < reaches.xs.length; x++) {
    const here = x * stride;
    let run = 0;
    for (let y = 0; y < reaches.ys.length; y++) {
      run += into[here + y]!;
      into[here + y] = run + (x > 0 ? into[here - stride + y]! : 0);
    }
    into[here + stride - 1] = 0;
  }
  into.fill(0, reaches.xs.length * stride);
  return into;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}

function least0(values: Float64Array): number {
  let least = Infinity;
  for (let i = 0; i < values.length; i++) if (values[i]! < least) least = values[i]!;
  return least;
}

function greatest(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! > most) most = values[i]!;
  return most;
}
