import type { Laid } from "./laid.ts";
import type { MostSpace } from "./most-space.ts";

/** What a turn may use of a box, with half its gaps: the room of grown rectangles. */
export type Extent = {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};

/** An exact fit may miss by this, in millimetres. */
const HAIR = 1e-6;

/**
 * A box filled with blocks of rectangles all turned one way: the best that straight cuts through the whole box, and
 * through each part again, come to; at the top level also five parts around a middle, which no straight cut
 * makes (Bischoff and Dowsland 1982). Cuts are tried at the given places only.
 */
export function fillBlocks(
  { turns }: MostSpace,
  extents: readonly [Extent, Extent],
  cuts: { readonly xs: readonly number[]; readonly ys: readonly number[] },
): readonly Laid[] {
  const xs = edges(cuts.xs);
  const ys = edges(cuts.ys);
  const [columns, rows] = [xs.length, ys.length];
  const best = new Int16Array(columns * columns * rows * rows);
  const choice = new Int16Array(best.length);
  const at = (x0: number, x1: number, y0: number, y1: number): number =>
    ((x0 * columns + x1) * rows + y0) * rows + y1;
  const across = [counts(0, "x"), counts(1, "x")] as const;
  const up = [counts(0, "y"), counts(1, "y")] as const;
  for (let wide = 1; wide < columns; wide++)
    for (let x0 = 0; x0 + wide < columns; x0++)
      for (let high = 1; high < rows; high++)
        for (let y0 = 0; y0 + high < rows; y0++) settle(x0, x0 + wide, y0, y0 + high);
  const five = bestOfFive();
  const laid: Laid[] = [];
  if (five !== null) for (const part of five) lay(...part);
  else lay(0, columns - 1, 0, rows - 1);
  return laid;

  function counts(turn: 0 | 1, way: "x" | "y"): Int16Array {
    const { width, height, gapX, gapY } = turns[turn];
    const [size, places] = way === "x" ? [width + gapX, xs] : [height + gapY, ys];
    const into = new Int16Array(places.length ** 2);
    for (let from = 0; from < places.length; from++)
      for (let to = from + 1; to < places.length; to++) {
        const [low, high] = clipped(turn, way, places[from]!, places[to]!);
        into[from * places.length + to] = Math.max(0, Math.floor((high - low + HAIR) / size));
      }
    return into;
  }

  function clipped(turn: 0 | 1, way: "x" | "y", from: number, to: number): readonly [number, number] {
    const extent = extents[turn];
    return way === "x"
      ? [Math.max(from, extent.left), Math.min(to, extent.right)]
      : [Math.max(from, extent.bottom), Math.min(to, extent.top)];
  }

  /** Choices: 0 and 1 one block of that turn; 2 + x a cut at x; −1 − y a cut at y. */
  function settle(x0: number, x1: number, y0: number, y1: number): void {
    let [most, how] = [-1, 0];
    for (const turn of [0, 1] as const) {
      const count = across[turn][x0 * columns + x1]! * up[turn][y0 * rows + y1]!;
      if (count > most) [most, how] = [count, turn];
    }
    for (let x = x0 + 1; x < x1; x++) {
      const count = best[at(x0, x, y0, y1)]! + best[at(x, x1, y0, y1)]!;
      if (count > most) [most, how] = [count, 2 + x];
    }
    const [left, right] = [at(x0, x1, y0, 0), at(x0, x1, 0, y1)];
    for (let y = y0 + 1; y < y1; y++) {
      const count = best[left + y]! + best[right + y * rows]!;
      if (count > most) [most, how] = [count, -1 - y];
    }
    best[at(x0, x1, y0, y1)] = most;
    choice[at(x0, x1, y0, y1)] = how;
  }

  function bestOfFive(): readonly (readonly [number, number, number, number])[] | null {
    const [right, top] = [columns - 1, rows - 1];
    let most = best[at(0, right, 0, top)]!;
    let parts: readonly (readonly [number, number, number, number])[] | null = null;
    for (let x1 = 1; x1 < right; x1++)
      for (let x2 = x1; x2 < right; x2++)
        for (let y1 = 1; y1 < top; y1++)
          for (let y2 = y1; y2 < top; y2++) {
            // around the middle one way, and the other way round
            const one =
              best[at(0, x1, 0, y2)]! +
              best[at(0, x2, y2, top)]! +
              best[at(x2, right, y1, top)]! +
              best[at(x1, right, 0, y1)]! +
              best[at(x1, x2, y1, y2)]!;
            const other =
              best[at(0, x2, 0, y1)]! +
              best[at(x2, right, 0, y2)]! +
              best[at(x1, right, y2, top)]! +
              best[at(0, x1, y1, top)]! +
              best[at(x1, x2, y1, y2)]!;
            if (Math.max(one, other) <= most) continue;
            most = Math.max(one, other);
            const middle = [x1, x2, y1, y2] as const;
            parts =
              one >= other
                ? [[0, x1, 0, y2], [0, x2, y2, top], [x2, right, y1, top], [x1, right, 0, y1], middle]
                : [[0, x2, 0, y1], [x2, right, 0, y2], [x1, right, y2, top], [0, x1, y1, top], middle];
          }
    return parts;
  }

  function lay(x0: number, x1: number, y0: number, y1: number): void {
    if (x0 === x1 || y0 === y1) return;
    const how = choice[at(x0, x1, y0, y1)]!;
    if (how >= 2) {
      lay(x0, how - 2, y0, y1);
      lay(how - 2, x1, y0, y1);
    } else if (how < 0) {
      lay(x0, x1, y0, -1 - how);
      lay(x0, x1, -1 - how, y1);
    } else layBlock(how === 0 ? 0 : 1, x0, x1, y0, y1);
  }

  function layBlock(turn: 0 | 1, x0: number, x1: number, y0: number, y1: number): void {
    const { width, height, gapX, gapY } = turns[turn];
    const [left] = clipped(turn, "x", xs[x0]!, xs[x1]!);
    const [bottom] = clipped(turn, "y", ys[y0]!, ys[y1]!);
    for (let i = 0; i < across[turn][x0 * columns + x1]!; i++)
      for (let j = 0; j < up[turn][y0 * rows + y1]!; j++)
        laid.push({
          turn,
          x: left + gapX / 2 + i * (width + gapX),
          y: bottom + gapY / 2 + j * (height + gapY),
        });
  }
}

/** The cuts and the two ends, which each turn's extent clips. */
function edges(cutsAt: readonly number[]): readonly number[] {
  return [-Infinity, ...cutsAt, Infinity];
}
