import type { Programme, Row, Solver } from "#kernels/search";
import type { HiddenMat } from "../sight/who-cannot-see.ts";

type Behind = Pick<HiddenMat, "mat" | "behind">;

/** Which mats of a plan stay, by index, rising; `exact` where no other choice of as many hides fewer. */
export type Kept = { readonly kept: readonly number[]; readonly hidden: number; readonly exact: boolean };

/** What the solver may spend on one plan: a fraction of a second. */
const LIMITS = { nodes: 2000, looks: 2000 };

/**
 * The choice of `count` of `size` mats of which the fewest are hidden, `hidden` telling who hides whom when all are
 * there. Asked of the solver as a programme of zeros and ones: a mat that stays behind one that stays is hidden. Its
 * answer is counted again here; without a solver, or where that gives up, mats are taken away one by one.
 */
export function leaveOut(
  size: number,
  hidden: readonly Behind[],
  count: number,
  solver: Solver | null,
): Kept {
  if (count === size) return { kept: [...Array(size).keys()], hidden: hidden.length, exact: true };
  const simple = oneByOne(size, hidden, count);
  if (simple.hidden === 0 || solver === null) return { ...simple, exact: simple.hidden === 0 };
  const outcome = solver.solve(programmeOf(size, hidden, count), LIMITS);
  if (outcome.kind !== "best") return { ...simple, exact: false };
  const kept = [...Array(size).keys()].filter((mat) => (outcome.columns[mat] ?? 0) > 0.5);
  const found = { kept, hidden: hiddenOf(hidden, new Set(kept)), exact: true };
  // counted anew: an answer that is not what the solver says it is proves nothing
  const trusted = kept.length === count && found.hidden === Math.round(-outcome.value);
  if (!trusted) return { ...simple, exact: false };
  return found.hidden < simple.hidden ? found : { ...simple, exact: found.hidden === simple.hidden };
}

/** How many of those that stay are behind somebody who stays. */
export function hiddenOf(hidden: readonly Behind[], kept: ReadonlySet<number>): number {
  return hidden.filter((it) => kept.has(it.mat) && it.behind.some((other) => kept.has(other))).length;
}

/** First a column a mat, 1 where it stays; then one for each that may be hidden, 1 where it is. */
function programmeOf(size: number, hidden: readonly Behind[], count: number): Programme {
  const mats = Array.from({ length: size }, () => ({ gain: 0, least: 0, most: 1, whole: true }));
  const blocks = hidden.map(() => ({ gain: -1, least: 0, most: 1 }));
  const all = { least: count, most: count, columns: [...Array(size).keys()] };
  const pairs = hidden.flatMap(({ mat, behind }, index): readonly Row[] =>
    behind.map((other) => ({
      least: -Infinity,
      most: 1,
      columns: [mat, other, size + index],
      values: [1, 1, -1],
    })),
  );
  return { columns: [...mats, ...blocks], rows: [all, ...pairs] };
}

/** Each time the mat whose leaving hides fewest, of equals the one that hides most others, then the last. */
function oneByOne(size: number, hidden: readonly Behind[], count: number): Omit<Kept, "exact"> {
  const kept = new Set(Array(size).keys());
  while (kept.size > count) {
    let best: { readonly mat: number; readonly rank: number } | undefined;
    for (const mat of [...kept].sort((a, b) => a - b)) {
      kept.delete(mat);
      const hides = hidden.filter((it) => kept.has(it.mat) && it.behind.includes(mat)).length;
      const rank = hiddenOf(hidden, kept) - hides / (size + 1);
      kept.add(mat);
      if (best === undefined || rank <= best.rank) best = { mat, rank };
    }
    if (best === undefined) break;
    kept.delete(best.mat);
  }
  return { kept: [...kept].sort((a, b) => a - b), hidden: hiddenOf(hidden, kept) };
}
