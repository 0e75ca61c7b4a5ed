import type { Point, Polygon } from "#kernels/geometry";
import { inverseOf } from "./inverse-of.ts";
import { predicted, residual } from "./measure-of.ts";
import type { Measure } from "./measured-walls.ts";

/** The outline that fits the measures best, each weighed by its error. */
export type FittedOutline = {
  readonly outline: Polygon;
  /** the sum of the squares of residual over error */
  readonly misfit: number;
  /**
   * of each measure, from 0 to 1, how much of a slip in it shows against the others: 0 where nothing else checks it
   */
  readonly checked: readonly number[];
  /** the covariance of the unknowns, square millimetres */
  readonly covariance: readonly (readonly number[])[];
};

/** Far more than the three to eight that halls take. */
const MOST_STEPS = 60;
/** millimetres: no corner moves further any more */
const STILL = 1e-4;

/**
 * Least squares by Gauss–Newton from a first outline, its first corner and the direction of its first wall held
 * still. Undefined where the measures leave something open or do not settle. The method is that of any adjustment of
 * a survey (for instance Ghilani, Adjustment Computations; from memory).
 */
export function fitOutline(measures: readonly Measure[], first: Polygon): FittedOutline | undefined {
  let outline = first;
  let misfit = misfitOf(measures, outline);
  for (let step = 0; step < MOST_STEPS; step++) {
    const { slopes, inverse } = linearised(measures, outline);
    if (inverse === undefined) return undefined;
    const shift = multiplied(inverse, pulls(measures, outline, slopes));
    const better = shortened(measures, outline, shift, misfit);
    const still = shift.every((it) => Math.abs(it) < STILL);
    outline = better.outline;
    misfit = better.misfit;
    if (still || better.given)
      return { outline, misfit, checked: checkedOf(measures, slopes, inverse), covariance: inverse };
  }
  return undefined;
}

/** Unknowns: x of the second corner, then x and y of each later one. */
export function unknownsOf(corner: number): readonly [x: number | undefined, y: number | undefined] {
  if (corner === 0) return [undefined, undefined];
  return corner === 1 ? [0, undefined] : [2 * corner - 3, 2 * corner - 2];
}

type Slope = { readonly unknown: number; readonly by: number };

function linearised(measures: readonly Measure[], outline: Polygon) {
  const size = 2 * outline.length - 3;
  const normal = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const slopes = measures.map((measure) => slopesOf(measure, outline));
  for (const [index, row] of slopes.entries()) {
    const weight = 1 / (measures[index]?.error ?? 1) ** 2;
    for (const one of row)
      for (const other of row) {
        const into = normal[one.unknown];
        if (into !== undefined) into[other.unknown] = (into[other.unknown] ?? 0) + weight * one.by * other.by;
      }
  }
  return { slopes, inverse: inverseOf(normal) };
}

/** How the measure changes with each unknown that it depends on. */
export function slopesOf(measure: Pick<Measure, "corners">, outline: Polygon): readonly Slope[] {
  return predicted(outline, measure).slopes.flatMap(({ corner, x, y }) => {
    const [forX, forY] = unknownsOf(corner);
    return [
      ...(forX === undefined ? [] : [{ unknown: forX, by: x }]),
      ...(forY === undefined ? [] : [{ unknown: forY, by: y }]),
    ];
  });
}

function pulls(
  measures: readonly Measure[],
  outline: Polygon,
  slopes: readonly (readonly Slope[])[],
): readonly number[] {
  const sums = Array.from({ length: 2 * outline.length - 3 }, () => 0);
  for (const [index, measure] of measures.entries()) {
    const off = residual(measure, predicted(outline, measure).value) / measure.error ** 2;
    for (const { unknown, by } of slopes[index] ?? []) sums[unknown] = (sums[unknown] ?? 0) + by * off;
  }
  return sums;
}

/** As far along the shift as makes the misfit no larger: whole, half, a quarter …; `given` up where none does. */
function shortened(measures: readonly Measure[], outline: Polygon, shift: readonly number[], before: number) {
  for (let share = 1; share > 1e-4; share /= 2) {
    const moved = outline.map((corner, index) => movedCorner(corner, index, shift, share));
    const misfit = misfitOf(measures, moved);
    if (misfit <= before) return { outline: moved, misfit, given: false };
  }
  return { outline, misfit: before, given: true };
}

function movedCorner([x, y]: Point, index: number, shift: readonly number[], share: number): Point {
  const [forX, forY] = unknownsOf(index);
  return [
    x + (forX === undefined ? 0 : (shift[forX] ?? 0) * share),
    y + (forY === undefined ? 0 : (shift[forY] ?? 0) * share),
  ];
}

function misfitOf(measures: readonly Measure[], outline: Polygon): number {
  return measures.reduce((sum, it) => sum + (residual(it, predicted(outline, it).value) / it.error) ** 2, 0);
}

/** Redundancy numbers: 1 less what the fit itself takes from each measure. */
function checkedOf(
  measures: readonly Measure[],
  slopes: readonly (readonly Slope[])[],
  inverse: readonly (readonly number[])[],
): readonly number[] {
  return measures.map(({ error }, index) => {
    const row = slopes[index] ?? [];
    let taken = 0;
    for (const one of row)
      for (const other of row) taken += one.by * other.by * (inverse[one.unknown]?.[other.unknown] ?? 0);
    return Math.min(1, Math.max(0, 1 - taken / error ** 2));
  });
}

function multiplied(matrix: readonly (readonly number[])[], by: readonly number[]): readonly number[] {
  return matrix.map((row) => row.reduce((sum, it, column) => sum + it * (by[column] ?? 0), 0));
}
