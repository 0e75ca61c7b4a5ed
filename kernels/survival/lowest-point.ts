export type LowestPoint = { readonly at: readonly number[]; readonly value: number };

type Corner = { readonly at: readonly number[]; readonly value: number };

const MOST_STARTS = 8;
const MOST_STEPS = 1000;

/**
 * Where a function of a few numbers is lowest, without its slope: the simplex of J. Nelder and R. Mead (1965),
 * begun anew around what it found until a new start gains nothing, since a simplex may fold flat on a ridge.
 * Infinity marks a point that is not allowed; the start must be allowed. Deterministic.
 */
export function lowestPoint(
  valueAt: (at: readonly number[]) => number,
  start: readonly number[],
  step = 0.5,
): LowestPoint {
  let best = cornerAt(valueAt, start);
  if (!Number.isFinite(best.value)) throw new RangeError(`value at the start: ${best.value}`);
  for (let turn = 0; turn < MOST_STARTS; turn += 1) {
    // every other simplex opens to the other side
    const found = descend(valueAt, best, turn % 2 === 0 ? step : -step / 2);
    const gain = best.value - found.value;
    best = found;
    if (turn > 0 && gain <= 1e-11 * (1 + Math.abs(best.value))) break;
  }
  return best;
}

function cornerAt(valueAt: (at: readonly number[]) => number, at: readonly number[]): Corner {
  const value = valueAt(at);
  return { at, value: Number.isNaN(value) ? Number.POSITIVE_INFINITY : value };
}

function descend(valueAt: (at: readonly number[]) => number, start: Corner, step: number): Corner {
  const look = (at: readonly number[]): Corner => cornerAt(valueAt, at);
  const corners = [start, ...start.at.map((_, index) => look(moved(start.at, index, step)))];
  for (let turn = 0; turn < MOST_STEPS && !isSmall(sortByValue(corners)); turn += 1) {
    const last = corners.length - 1;
    const worst = must(corners[last]);
    const middle = middleOf(corners.slice(0, last));
    const next = replacementOf(corners, worst, middle, look);
    if (next !== undefined) corners[last] = next;
    else shrink(corners, look);
  }
  return must(sortByValue(corners)[0]);
}

/** The corner in the place of the worst, or undefined when all should move towards the best. */
function replacementOf(
  corners: readonly Corner[],
  worst: Corner,
  middle: readonly number[],
  look: (at: readonly number[]) => Corner,
): Corner | undefined {
  const best = must(corners[0]);
  const second = must(corners.at(-2));
  const mirrored = look(along(middle, worst.at, -1));
  if (mirrored.value < best.value) {
    const further = look(along(middle, worst.at, -2));
    return further.value < mirrored.value ? further : mirrored;
  }
  if (mirrored.value < second.value) return mirrored;
  const outside = mirrored.value < worst.value;
  const nearer = look(along(middle, outside ? mirrored.at : worst.at, 0.5));
  return nearer.value < Math.min(worst.value, mirrored.value) ? nearer : undefined;
}

function shrink(corners: Corner[], look: (at: readonly number[]) => Corner): void {
  const best = must(corners[0]);
  for (let index = 1; index < corners.length; index += 1) {
    corners[index] = look(along(best.at, must(corners[index]).at, 0.5));
  }
}

function isSmall(corners: readonly Corner[]): boolean {
  const best = must(corners[0]);
  const spread = must(corners.at(-1)).value - best.value;
  const width = Math.max(...corners.map(({ at }) => farthest(at, best.at)));
  return (spread <= 1e-12 * (1 + Math.abs(best.value)) && width < 1e-4) || width < 1e-9;
}

function farthest(a: readonly number[], b: readonly number[]): number {
  return Math.max(...a.map((value, index) => Math.abs(value - must(b[index]))));
}

function sortByValue(corners: Corner[]): readonly Corner[] {
  return corners.sort((a, b) => a.value - b.value || 0);
}

function moved(at: readonly number[], index: number, by: number): readonly number[] {
  return at.map((value, other) => (other === index ? value + by : value));
}

function middleOf(corners: readonly Corner[]): readonly number[] {
  const first = must(corners[0]);
  return first.at.map(
    (_, index) => corners.reduce((sum, it) => sum + must(it.at[index]), 0) / corners.length,
  );
}

function along(from: readonly number[], to: readonly number[], share: number): readonly number[] {
  return from.map((value, index) => value + share * (must(to[index]) - value));
}

function must<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new RangeError("a corner is missing");
  return value;
}
