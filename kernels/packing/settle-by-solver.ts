import type { Outcome, Programme, Row } from "#kernels/search";
import type { Cover } from "./cover-bound.ts";
import type { Laid } from "./laid.ts";
import type { Reaches } from "./reach-of.ts";

/**
 * Whether `target` rectangles can be laid as far as the points can tell. "no": they cannot. "perhaps": at these
 * places they may, though the floor may forbid it. "unclear": a limit was met.
 */
export type Settled =
  | { readonly kind: "no" }
  | { readonly kind: "perhaps"; readonly laid: readonly Laid[] }
  | { readonly kind: "unclear" };

/** Places left after fixing, and rounds of points added, before it is given up as too much. */
const MOST_PLACES = 1500;
/** Rows past which one question takes minutes rather than seconds. */
const MOST_ROWS = 2000;
const MOST_ROUNDS = 25;
/** So few places that all points at which any two can meet are taken at once. */
const FEW = 800;
/** Rounds without whole numbers: cheap, and each adds points that count. */
const LINEAR_ROUNDS = 6;

/**
 * Asks the solver, over what the weights leave open. A place whose block weighs 1 + d costs a plan d of what the
 * weights prove at most; with target rectangles in it a plan can lose bound − target only, so places that cost more
 * are left out. Of two blocks where one lies in the other only the smaller is kept: it may stand for the larger in
 * any plan. Points are added as rows only where an answer covers one twice. Yields one programme after another and
 * takes what the solver says to each, so that whoever asks may stop between two.
 */
export function* settleBySolver(cover: Cover, target: number): Generator<Programme, Settled, Outcome> {
  const places = smallest(cover.reaches, affordable(cover, target));
  if (places.length > MOST_PLACES) return { kind: "unclear" };
  const rows = new Map<number, Row>();
  const known = new Set<string>();
  for (const point of peaks(cover, places)) addRow(point);
  for (let round = 0, whole = false; round < MOST_ROUNDS; round++) {
    if (rows.size > MOST_ROWS) return { kind: "unclear" };
    // a gain for each, though any plan of the target would do: which of the two is sooner is not measured alone
    const outcome = yield {
      columns: places.map(() => ({ gain: 1, least: 0, most: 1, whole })),
      rows: [...rows.values(), enough()],
    };
    if (outcome.kind === "impossible") return { kind: "no" };
    if (outcome.kind !== "best") return { kind: "unclear" };
    const twice = coveredTwice(cover, places, outcome.columns);
    if (twice.length === 0 && whole) return { kind: "perhaps", laid: laidAt(outcome.columns) };
    if (!whole && (twice.length === 0 || round >= LINEAR_ROUNDS)) {
      whole = true;
      if (places.length <= FEW) for (const point of corners(cover, places)) addRow(point);
    }
    for (const point of twice) addRow(point);
  }
  return { kind: "unclear" };

  function addRow(point: number): void {
    const [x, y] = [Math.floor(point / cover.stride), point % cover.stride];
    const columns = places.flatMap((place, column) => (covers(cover.reaches, place, x, y) ? [column] : []));
    const key = columns.join(" ");
    if (columns.length <= 1 || known.has(key)) return;
    known.add(key);
    rows.set(point, { least: -Infinity, most: 1, columns });
  }

  function enough(): Row {
    return { least: target, most: Infinity, columns: places.map((_, column) => column) };
  }

  function laidAt(values: readonly number[]): readonly Laid[] {
    const { turns, lefts, lows } = cover.reaches;
    return places.flatMap((place, column) =>
      (values[column] ?? 0) > 0.5
        ? [{ turn: turns[place] === 0 ? 0 : 1, x: lefts[place]!, y: lows[place]! }]
        : [],
    );
  }
}

function affordable({ reaches, stride, bestWeights, bound }: Cover, target: number): readonly number[] {
  const totals = new Float64Array((reaches.xs.length + 1) * stride);
  for (let x = 0; x < reaches.xs.length; x++)
    for (let y = 0; y < reaches.ys.length; y++)
      totals[(x + 1) * stride + y + 1] =
        bestWeights[x * stride + y]! +
        totals[x * stride + y + 1]! +
        totals[(x + 1) * stride + y]! -
        totals[x * stride + y]!;
  const kept: number[] = [];
  for (let place = 0; place < reaches.size; place++) {
    const [x0, x1, y0, y1] = blockOf(reaches, place);
    const weight =
      totals[x1 * stride + y1]! -
      totals[x0 * stride + y1]! -
      totals[x1 * stride + y0]! +
      totals[x0 * stride + y0]!;
    if (weight - 1 <= bound - target + 1e-6) kept.push(place);
  }
  return kept;
}

function smallest(reaches: Reaches, places: readonly number[]): readonly number[] {
  const sizes = places.map((place) => {
    const [x0, x1, y0, y1] = blockOf(reaches, place);
    return { place, x0, x1, y0, y1, size: (x1 - x0) * (y1 - y0) };
  });
  sizes.sort((a, b) => a.size - b.size || a.place - b.place);
  const kept: typeof sizes = [];
  for (const each of sizes)
    if (!kept.some((it) => it.x0 >= each.x0 && it.x1 <= each.x1 && it.y0 >= each.y0 && it.y1 <= each.y1))
      kept.push(each);
  return kept.map(({ place }) => place);
}

/** Points over which more blocks lie than over their neighbours: with those, few points are missing. */
function peaks({ reaches, stride }: Cover, places: readonly number[]): readonly number[] {
  const load = loadOf({ reaches, stride }, places, () => 1);
  const points: number[] = [];
  for (let x = 0; x < reaches.xs.length; x++)
    for (let y = 0; y < reaches.ys.length; y++) {
      const point = x * stride + y;
      const here = load[point]!;
      const left = x > 0 ? load[point - stride]! : 0;
      const below = y > 0 ? load[point - 1]! : 0;
      if (here > left && here > below && here >= load[point + 1]! && here >= load[point + stride]!)
        points.push(point);
    }
  return points;
}

function loadOf(
  { reaches, stride }: Pick<Cover, "reaches" | "stride">,
  places: readonly number[],
  value: (column: number) => number,
): Float64Array {
  const load = new Float64Array((reaches.xs.length + 1) * stride);
  for (const [column, place] of places.entries()) {
    const share = value(column);
    if (share < 1e-9) continue;
    const [x0, x1, y0, y1] = blockOf(reaches, place);
    for (let x = x0; x < x1; x++) for (let y = y0; y < y1; y++) load[x * stride + y]! += share;
  }
  return load;
}

/** Blocks that meet all meet at one point: the least of it is the lower left corner of two of them. */
function corners({ reaches, stride }: Cover, places: readonly number[]): readonly number[] {
  const lefts = [...new Set(places.map((place) => reaches.blocks[4 * place]!))];
  const lows = [...new Set(places.map((place) => reaches.blocks[4 * place + 2]!))];
  return lefts.flatMap((x) => lows.map((y) => x * stride + y));
}

/** Points that the values cover more than once: the most covered of each patch, the worst first, so many at most. */
function coveredTwice(
  { reaches, stride }: Cover,
  places: readonly number[],
  values: readonly number[],
): readonly number[] {
  const load = loadOf({ reaches, stride }, places, (column) => values[column] ?? 0);
  const over: number[] = [];
  for (let x = 0; x < reaches.xs.length; x++)
    for (let y = 0; y < reaches.ys.length; y++) {
      const here = load[x * stride + y]!;
      const before = Math.max(x > 0 ? load[(x - 1) * stride + y]! : 0, y > 0 ? load[x * stride + y - 1]! : 0);
      if (here > 1 + 1e-6 && here > before + 1e-9) over.push(x * stride + y);
    }
  return over.sort((a, b) => load[b]! - load[a]! || a - b).slice(0, POINTS_A_ROUND);
}

const POINTS_A_ROUND = 150;

function covers(reaches: Reaches, place: number, x: number, y: number): boolean {
  const [x0, x1, y0, y1] = blockOf(reaches, place);
  return x >= x0 && x < x1 && y >= y0 && y < y1;
}

function blockOf(
  { blocks }: Reaches,
  place: number,
): readonly [x0: number, x1: number, y0: number, y1: number] {
  return [blocks[4 * place]!, blocks[4 * place + 1]!, blocks[4 * place + 2]!, blocks[4 * place + 3]!];
}
