import type { Programme } from "#kernels/search";
import { mostSpace } from "./most-space.ts";
import { surroundingsOf } from "./obstacles.ts";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { pointsOf } from "./points-of.ts";
import { reachesOf, slabsOf } from "./reach-of.ts";

/** Points a way, and the thickness in millimetres of the thinnest slab: as fine as the search itself looks. */
const POINTS = 300;
const FINEST = 6;

/**
 * The whole model that the search never builds: a column that is 0 or 1 for each place of a rectangle along one axis, a
 * row for each point at which the least of two blocks' common points can lie. Its greatest sum is a bound on plans
 * along that axis. For comparison; null where it would have more than `most` entries.
 */
export function positionGrid(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axis: number,
  most: number,
): Programme | null {
  const space = mostSpace(piece, gaps, surroundingsOf(floor, gaps.wall), axis);
  const { xs, ys } = pointsOf(space, POINTS);
  const slabs = space.turns.map((turn) => slabsOf(turn, ys, FINEST));
  const { size, blocks } = reachesOf(space, xs, ys, slabs);
  const [lefts, lows] = [new Set<number>(), new Set<number>()];
  for (let place = 0; place < size; place++) {
    lefts.add(blocks[4 * place]!);
    lows.add(blocks[4 * place + 2]!);
  }
  const rows = new Map<number, number[]>();
  let entries = 0;
  for (let place = 0; place < size; place++)
    for (let x = blocks[4 * place]!; x < blocks[4 * place + 1]!; x++)
      for (let y = blocks[4 * place + 2]!; y < blocks[4 * place + 3]!; y++) {
        if (!lefts.has(x) || !lows.has(y)) continue;
        if (++entries > most) return null;
        const key = x * ys.length + y;
        const row = rows.get(key);
        if (row === undefined) rows.set(key, [place]);
        else row.push(place);
      }
  return {
    columns: Array.from({ length: size }, () => ({ gain: 1, least: 0, most: 1, whole: true })),
    rows: [...rows.values()].map((columns) => ({ least: -Infinity, most: 1, columns })),
  };
}
