import type { Reaches } from "./reach-of.ts";

/** Reaches as blocks of a grid of points; sums over blocks and over points are running totals over the grid. */
export type CoverGrid = {
  readonly reaches: Reaches;
  /** points in a row of the grid, one more for the running totals */
  readonly stride: number;
  /** length of an array that holds a value for each point */
  readonly points: number;
  readonly corners: Corners;
  readonly totals: Float64Array;
};

type Corners = {
  readonly lowLeft: Int32Array;
  readonly lowRight: Int32Array;
  readonly highLeft: Int32Array;
  readonly highRight: Int32Array;
};

export function coverGrid(reaches: Reaches): CoverGrid {
  const stride = reaches.ys.length + 1;
  const points = (reaches.xs.length + 1) * stride;
  return { reaches, stride, points, corners: cornersOf(reaches, stride), totals: new Float64Array(points) };
}

function cornersOf({ blocks, size }: Reaches, stride: number): Corners {
  const at = (x: 0 | 1, y: 2 | 3): Int32Array =>
    Int32Array.from({ length: size }, (_, i) => blocks[4 * i + x]! * stride + blocks[4 * i + y]!);
  return { lowLeft: at(0, 2), lowRight: at(1, 2), highLeft: at(0, 3), highRight: at(1, 3) };
}

/** What each block weighs. */
export function coveredBy(
  { reaches, stride, corners, totals }: CoverGrid,
  weights: Float64Array,
  into: Float64Array,
): Float64Array {
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

/** What the blocks over each point come to. */
export function loadOf(
  { reaches, stride, corners }: CoverGrid,
  shares: Float64Array,
  into: Float64Array,
): Float64Array {
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

export function sumOf(values: Float64Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}

export function leastOf(values: Float64Array): number {
  let least = Infinity;
  for (let i = 0; i < values.length; i++) if (values[i]! < least) least = values[i]!;
  return least;
}

export function greatestOf(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! > most) most = values[i]!;
  return most;
}
