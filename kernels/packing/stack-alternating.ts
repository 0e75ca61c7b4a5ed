import { openBetween, type PhaseColumns } from "./phase-columns.ts";

export type AlternatingLine = { readonly at: number; readonly places: readonly number[] };
export type AlternatingStack = { readonly count: number; readonly lines: readonly AlternatingLine[] };

/** The last line of a stack: where it lies, how many it holds, of which set, and what lies below it. */
type Last = {
  readonly at: number;
  readonly holds: number;
  readonly side: 0 | 1;
  readonly before: Last | null;
};

/** Offsets may miss an exact fit by this, in millimetres, so that what fits on paper survives adding. */
const TIE = 1e-7;

/**
 * The most in lines at least `pitch` apart that take turns between two sets of places. lowest[side][n] is the lowest
 * offset at which a last line of that set can lie with n in all: whatever it holds, the rest lie best as low as
 * they can, as in stackLines. If n + 1 can be laid so can n, so the first n that cannot be laid ends it.
 */
export function stackAlternating(even: PhaseColumns, odd: PhaseColumns, pitch: number): AlternatingStack {
  const sets = [even, odd] as const;
  const lowest: readonly [Last[], Last[]] = [[], []];
  let last: Last | null = null;
  for (let n = 1; ; n++) {
    const found = ([0, 1] as const).map((side) =>
      lowestLast(sets[side], n, side, lowest[side === 0 ? 1 : 0], pitch),
    );
    const [one, other] = found;
    if (one) lowest[0][n] = one;
    if (other) lowest[1][n] = other;
    if (!one && !other) return { count: n - 1, lines: unwind(last, sets) };
    last = one ?? other ?? null;
  }
}

function lowestLast(
  columns: PhaseColumns,
  n: number,
  side: 0 | 1,
  below: readonly Last[],
  pitch: number,
): Last | null {
  let best: Last | null = null;
  for (let holds = 1; holds <= Math.min(columns.places.length, n); holds++) {
    const before = below[n - holds] ?? null;
    if (holds < n && before === null) continue;
    const at = firstHolding(columns, before === null ? -Infinity : before.at + pitch, holds);
    if (at !== null && (best === null || at < best.at)) best = { at, holds, side, before };
  }
  return best;
}

/** The lowest offset from `earliest` on at which so many places are open. */
function firstHolding(
  { changes, openAt, openPast }: PhaseColumns,
  earliest: number,
  holds: number,
): number | null {
  for (let i = 0; i < changes.length; i++) {
    const at = changes[i]!;
    if (at >= earliest - TIE) {
      if (openAt[i]! >= holds) return at;
    } else if ((changes[i + 1] ?? -Infinity) > earliest + TIE && openPast[i]! >= holds) return earliest;
  }
  return null;
}

function unwind(last: Last | null, sets: readonly [PhaseColumns, PhaseColumns]): readonly AlternatingLine[] {
  const lines: AlternatingLine[] = [];
  for (let line = last; line !== null; line = line.before) {
    const { places, heights } = sets[line.side];
    const open = openBetween(heights, line.at, line.at).slice(0, line.holds);
    lines.push({ at: line.at, places: open.flatMap((place) => places[place] ?? []) });
  }
  return lines.toReversed();
}
