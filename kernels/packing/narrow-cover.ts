import { beginAt, type Cover, startCover } from "./cover-bound.ts";
import { coveredBy } from "./cover-sums.ts";
import type { Reaches } from "./reach-of.ts";

/** Rounding in sums of weights, many times over. */
const DOUBT = 1e-6;
/** Places that must go before it is worth while to begin again without them. */
const WORTHWHILE = 0.04;

/**
 * The same cover without the places that no plan of `target` rectangles can use, or null where those are few. Where
 * the weights prove B, a rectangle whose block weighs 1 + d uses up d more than its due, and target of them can use
 * up no more than B − target. What is left has fewer places to prove, so its bound may come down further, below
 * the target itself. It then speaks of plans of target or more only.
 */
export function narrowCover(cover: Cover, target: number): Cover | null {
  const spare = cover.bound - target;
  if (!(spare < 1)) return null;
  const { reaches } = cover;
  const weights = coveredBy(cover, cover.bestWeights, cover.overshot);
  const kept: number[] = [];
  for (let place = 0; place < reaches.size; place++)
    if (weights[place]! <= 1 + spare + DOUBT) kept.push(place);
  if (kept.length > (1 - WORTHWHILE) * reaches.size) return null;
  return part(cover, kept, target);
}

/** The cover with these of its places only, for plans of target or more. */
export function part(cover: Cover, kept: readonly number[], target: number): Cover {
  const { reaches, next } = cover;
  const narrowed = { ...startCover(partOf(reaches, kept)), spared: Math.max(cover.spared, target - 1) };
  narrowed.bound = kept.length === 0 ? 0 : cover.bound;
  narrowed.bestWeights = cover.bestWeights;
  narrowed.boldness = cover.boldness;
  narrowed.rounds = cover.rounds;
  narrowed.nextLook = cover.rounds + AGAIN;
  beginAt(narrowed, {
    shares: Float64Array.from(kept, (place) => next.shares[place]!),
    weights: next.weights,
    covered: Float64Array.from(kept, (place) => next.covered[place]!),
  });
  narrowed.next.shares.set(narrowed.now.shares);
  return narrowed;
}

/** Rounds after which to look at what the narrowed cover proves. */
const AGAIN = 80;

function partOf({ xs, ys, blocks, lefts, lows, turns }: Reaches, kept: readonly number[]): Reaches {
  const part = new Int32Array(4 * kept.length);
  for (const [index, place] of kept.entries()) part.set(blocks.subarray(4 * place, 4 * place + 4), 4 * index);
  return {
    xs,
    ys,
    size: kept.length,
    blocks: part,
    lefts: Float64Array.from(kept, (place) => lefts[place]!),
    lows: Float64Array.from(kept, (place) => lows[place]!),
    turns: Uint8Array.from(kept, (place) => turns[place]!),
  };
}
