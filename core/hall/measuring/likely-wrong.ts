import type { Polygon } from "#kernels/geometry";
import { type FittedOutline, fitOutline } from "./fit-outline.ts";
import { predicted, residual } from "./measure-of.ts";
import type { Measure } from "./measured-walls.ts";

/** A measure that the others contradict. */
export type Doubt = {
  readonly measure: Measure;
  /** what the others say it is, in its own unit */
  readonly others: number;
  /** the outline that the others give */
  readonly outline: Polygon;
  /** how much better the rest fits without it */
  readonly relief: number;
  /** whether nothing stands out any more without it */
  readonly settles: boolean;
};

/**
 * A measure stands out where its residual is more than 3.29 times what is ordinary for it: one sound measure in a
 * thousand does (Baarda, A testing procedure for use in geodetic networks, 1968; from memory).
 */
const STANDS_OUT = 3.29;

/** Left out in turn at most. */
const MOST_TRIED = 10;

/** How far each measure is from what the rest would let one expect, in ordinary errors; 0 where nothing checks it. */
function standardised(measures: readonly Measure[], { outline, checked }: FittedOutline): readonly number[] {
  return measures.map((measure, index) => {
    const share = checked[index] ?? 0;
    if (share < 1e-6) return 0;
    const off = residual(measure, predicted(outline, measure).value);
    return Math.abs(off) / (measure.error * Math.sqrt(share));
  });
}

/**
 * The measures without which the rest fits best, the most likely first. Each of those with the largest standardised
 * residuals is left out and the rest fitted anew. Those follow the best that relieve the misfit by nearly as much, to
 * 4 (two ordinary errors) and at least half: what is measured cannot tell them apart.
 */
export function likelyWrong(measures: readonly Measure[], fitted: FittedOutline): readonly Doubt[] {
  const sizes = standardised(measures, fitted);
  const tried = [...measures.keys()]
    .filter((index) => (sizes[index] ?? 0) > 0 && measures[index]?.told === true)
    .sort((a, b) => (sizes[b] ?? 0) - (sizes[a] ?? 0))
    .slice(0, MOST_TRIED);
  const doubts = tried
    .flatMap((index) => withoutOne(measures, index, fitted))
    .sort((a, b) => b.relief - a.relief);
  const most = doubts[0]?.relief ?? 0;
  return doubts.filter((it) => it.relief >= most - 4 && it.relief >= most / 2);
}

function withoutOne(measures: readonly Measure[], index: number, fitted: FittedOutline): readonly Doubt[] {
  const measure = measures[index];
  if (measure === undefined) return [];
  const left = measures.toSpliced(index, 1);
  const rest = fitOutline(left, fitted.outline);
  if (rest === undefined) return [];
  const others = predicted(rest.outline, measure).value;
  const relief = fitted.misfit - rest.misfit;
  return [{ measure, others, outline: rest.outline, relief, settles: !standsOut(left, rest) }];
}

/** Whether some measure is further from the rest than one sound measure in a thousand. */
export function standsOut(measures: readonly Measure[], fitted: FittedOutline): boolean {
  return standardised(measures, fitted).some(
    (size, index) => size > STANDS_OUT && measures[index]?.told === true,
  );
}
