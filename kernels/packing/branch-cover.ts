import { type Cover } from "./cover-bound.ts";
import { part } from "./narrow-cover.ts";

/** Points looked at as places to part a cover: those that weigh most. */
const HEAVIEST = 40;

/**
 * Two covers, each with fewer places, that together speak of every plan of `target` the cover speaks of. Over a heavy
 * point lies one rectangle at most: one of the first kind, and then none of the second, or else none of the first.
 * The kinds are the two turns, or further left and further right, or lower and higher: whichever parts the fractions
 * most evenly. Nothing where fractions part nowhere.
 */
export function branchCover(cover: Cover, target: number): readonly Cover[] {
  const points = heaviest(cover);
  let best: Parting | null = null;
  for (const point of points)
    for (const kind of KINDS) {
      const parting = partAt(cover, point, kind);
      if (best === null || parting.evenness > best.evenness) best = parting;
    }
  if (best === null || best.evenness <= 0) return [];
  const { over, first } = best;
  const all = Array.from({ length: cover.reaches.size }, (_, place) => place);
  return [
    part(
      cover,
      all.filter((place) => !over.has(place) || first.has(place)),
      target,
    ),
    part(
      cover,
      all.filter((place) => !first.has(place)),
      target,
    ),
  ];
}

type Parting = {
  readonly over: ReadonlySet<number>;
  readonly first: ReadonlySet<number>;
  readonly evenness: number;
};
type Kind = "turn" | "across" | "up";
const KINDS: readonly Kind[] = ["turn", "across", "up"];

function heaviest({ bestWeights }: Cover): readonly number[] {
  const points: number[] = [];
  for (let point = 0; point < bestWeights.length; point++) if (bestWeights[point]! > 1e-3) points.push(point);
  return points.sort((a, b) => bestWeights[b]! - bestWeights[a]! || a - b).slice(0, HEAVIEST);
}

function partAt({ reaches, stride, next }: Cover, point: number, kind: Kind): Parting {
  const [x, y] = [Math.floor(point / stride), point % stride];
  const { blocks, turns, lefts, lows } = reaches;
  const over: number[] = [];
  for (let place = 0; place < reaches.size; place++)
    if (
      x >= blocks[4 * place]! &&
      x < blocks[4 * place + 1]! &&
      y >= blocks[4 * place + 2]! &&
      y < blocks[4 * place + 3]!
    )
      over.push(place);
  const at = (place: number): number =>
    kind === "turn" ? turns[place]! : kind === "across" ? lefts[place]! : lows[place]!;
  const shares = over.map((place) => next.shares[place]!);
  const total = shares.reduce((sum, share) => sum + share, 0);
  const middle =
    kind === "turn" ? 0 : over.reduce((sum, place, i) => sum + at(place) * shares[i]!, 0) / total;
  const first = new Set(over.filter((place) => at(place) <= middle));
  const inFirst = over.reduce((sum, place, i) => sum + (first.has(place) ? shares[i]! : 0), 0);
  // by turn is the better question: it is the only one that fractions cannot dodge by a small step
  const evenness = Math.min(inFirst, total - inFirst) * (kind === "turn" ? 1.5 : 1);
  return { over: new Set(over), first, evenness };
}
