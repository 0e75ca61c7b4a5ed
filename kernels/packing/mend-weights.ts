import { type CoverGrid, coveredBy, leastOf, loadOf, sumOf } from "./cover-sums.ts";

/** Weights for the points, all of them together, and the least that a block weighs. */
export type Mended = { readonly weights: Float64Array; readonly bound: number };

/** The share of blocks that are left too light by the scaling, to be made up for one by one. */
const LEFT_LIGHT = [0.002, 0.01] as const;
const PASSES = 12;

/**
 * Weights under which each block weighs at least one, made of weights that are nearly so. To scale all until the
 * lightest block weighs one is dear: a few blocks of thousands are far lighter than the rest. So the weights are
 * scaled until most blocks weigh one, and where the others fall short weight is added, at points that many of
 * them share. What is still missing after some passes is scaled away. Answers the best that was seen.
 */
export function mendWeights(grid: CoverGrid, weights: Float64Array, covered: Float64Array): Mended {
  const work = { weights: new Float64Array(grid.points), short: new Float64Array(covered.length) };
  let best: Mended = scaled(weights, leastOf(covered));
  const sorted = Float64Array.from(covered).sort();
  for (const share of LEFT_LIGHT) {
    const level = sorted[Math.floor(share * sorted.length)] ?? 0;
    if (level <= 0) continue;
    for (let i = 0; i < weights.length; i++) work.weights[i] = weights[i]! / level;
    for (let pass = 0; pass < PASSES; pass++) {
      const now = coveredBy(grid, work.weights, work.short);
      const least = leastOf(now);
      if (provenBy(sumOf(work.weights), least) < best.bound) best = scaled(work.weights, least);
      if (least >= 1 - 1e-9) break;
      for (let i = 0; i < now.length; i++) now[i] = now[i]! < 1 ? 1 - now[i]! : 0;
      addWhereShort(grid, work.weights, now, pass);
    }
  }
  return best;
}

function scaled(weights: Float64Array, least: number): Mended {
  if (least <= 0) return { weights, bound: Infinity };
  return { weights: weights.map((weight) => weight / least), bound: provenBy(sumOf(weights), least) };
}

/**
 * All weights over the least that a block weighs. Each sum has under a million terms of the same sign, so it is
 * wrong by less than 1e-9 of itself; both are taken at their worse end, and differences of totals are allowed
 * for by the same share of the whole.
 */
function provenBy(total: number, least: number): number {
  const doubt = 1e-12 * total + 1e-12;
  return least - doubt > 0 ? (total + doubt) / (least - doubt) : Infinity;
}

/**
 * One point for each patch of the grid, that over which most is missing, gets what the lightest block over it
 * misses. Patches are as large as a block and every other one is left for the next pass, so that no block gets
 * from two points at once.
 */
function addWhereShort(grid: CoverGrid, weights: Float64Array, short: Float64Array, pass: number): void {
  const { reaches, stride } = grid;
  const points = worstOfPatches(grid, loadOf(grid, short, grid.totals), pass).map((point) => ({
    point,
    x: Math.floor(point / stride),
    y: point % stride,
    missing: 0,
  }));
  for (let i = 0; i < short.length; i++) {
    if (short[i] === 0) continue;
    const [x0, x1] = [reaches.blocks[4 * i]!, reaches.blocks[4 * i + 1]!];
    const [y0, y1] = [reaches.blocks[4 * i + 2]!, reaches.blocks[4 * i + 3]!];
    for (const each of points)
      if (each.x >= x0 && each.x < x1 && each.y >= y0 && each.y < y1)
        each.missing = Math.max(each.missing, short[i]!);
  }
  for (const { point, missing } of points) weights[point]! += missing;
  // the running totals were lent: their first row and column must be zero again
  grid.totals.fill(0);
}

function worstOfPatches(
  { reaches, stride }: CoverGrid,
  missing: Float64Array,
  pass: number,
): readonly number[] {
  const [wide, high] = sizeOfPatch(reaches.blocks);
  const worst = new Map<number, number>();
  for (let x = 0; x < reaches.xs.length; x++) {
    const column = Math.floor(x / wide);
    if (column % 2 !== pass % 2) continue;
    for (let y = 0; y < reaches.ys.length; y++) {
      const here = missing[x * stride + y]!;
      const row = Math.floor(y / high);
      if (here <= 1e-9 || row % 2 !== (pass >> 1) % 2) continue;
      const held = worst.get(column * stride + row);
      if (held === undefined || missing[held]! < here) worst.set(column * stride + row, x * stride + y);
    }
  }
  return [...worst.values()];
}

function sizeOfPatch(blocks: Int32Array): readonly [wide: number, high: number] {
  let [wide, high] = [1, 1];
  for (let i = 0; i < blocks.length; i += 4) {
    wide = Math.max(wide, blocks[i + 1]! - blocks[i]!);
    high = Math.max(high, blocks[i + 3]! - blocks[i + 2]!);
  }
  return [wide, high];
}
