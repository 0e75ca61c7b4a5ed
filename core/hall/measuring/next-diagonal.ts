// Example: a room of 8 × 12 m with walls only: A–C or B–D, about 14.42 m, tells whether its corners are square. Once
// two measures are as likely wrong, it is the diagonal whose length differs most between the two halls.
// Invariant: only a diagonal that can be taped, inside the walls and along none, and that was not taped yet, is named.
import { containsPoint, edgesOf, type Polygon, segmentDistance } from "#kernels/geometry";
import { formatLength, type LengthUnits } from "#core/words";
import { cornerName } from "../corner-names.ts";
import type { ClosedWalls, NextDiagonal } from "./closed-walls-types.ts";
import { type FittedOutline, slopesOf, unknownsOf } from "./fit-outline.ts";
import { predicted } from "./measure-of.ts";
import type { MeasuredDiagonal } from "./measured-walls.ts";

/** A tape's ordinary error, squared: 10 mm. */
const TAPE_VARIANCE = 100;
/** Apart by less, two readings of a tape do not tell two halls apart. Millimetres. */
const TELLS_FROM = 60;
/** A corner that may ordinarily be off by no more is as sure as a mat plan needs. Millimetres. */
const SURE_ENOUGH = 40;

/**
 * The diagonal to measure next; null where none that can be taped would help. Where several halls fit as well, the
 * one that tells them apart; else the one that lessens the uncertainty of all corners most (the A-optimal next
 * observation, by the rank-one update of the covariance; Ghilani, Adjustment Computations, from memory).
 */
export function nextDiagonal(
  fitted: FittedOutline,
  taped: readonly MeasuredDiagonal[],
  others: readonly Polygon[],
  { open, unchecked }: Pick<ClosedWalls, "open" | "unchecked">,
  units: LengthUnits,
): NextDiagonal | null {
  const free = freeDiagonals(fitted.outline, taped);
  if (others.length > 1) {
    const best = bestOf(free, (it) => apart(it, others));
    if (best !== undefined && best.worth >= TELLS_FROM) return named(best, fitted, "tell", units);
  }
  if (open.length === 0 && !unchecked && taped.length > 0 && furthestOff(fitted) <= SURE_ENOUGH) return null;
  const best = bestOf(free, (it) => lessens(it, fitted));
  return best === undefined ? null : named(best, fitted, open.length > 0 ? "pin" : "check", units);
}

type Pair = { readonly from: number; readonly to: number };

function bestOf(pairs: readonly Pair[], worthOf: (pair: Pair) => number) {
  return pairs
    .map((pair) => ({ ...pair, worth: worthOf(pair) }))
    .reduce<(Pair & { readonly worth: number }) | undefined>(
      // ties go to the corner that comes first
      (best, it) => (best === undefined || it.worth > best.worth + 1e-6 ? it : best),
      undefined,
    );
}

function named(
  { from, to }: Pair,
  { outline }: FittedOutline,
  why: NextDiagonal["why"],
  units: LengthUnits,
): NextDiagonal {
  const expected = Math.round(lengthIn(outline, { from, to }));
  const name = `the diagonal ${cornerName(from)}–${cornerName(to)}`;
  const does = {
    pin: "it pins the shape",
    tell: "it tells which measure is wrong",
    check: "it checks the corners and the lengths",
  }[why];
  const about = why === "pin" ? "" : `, about ${formatLength(expected, units)} if all is right`;
  const size = why === "tell" ? "" : about;
  return { from, to, name, expected, why, says: `Measure ${name} next${size}: ${does}.` };
}

function lengthIn(outline: Polygon, { from, to }: Pair): number {
  return predicted(outline, { corners: [from, to] }).value;
}

/** How much longer the diagonal is in one of the halls than in another. */
function apart(pair: Pair, outlines: readonly Polygon[]): number {
  const lengths = outlines.map((it) => lengthIn(it, pair));
  return Math.max(...lengths) - Math.min(...lengths);
}

/** By how much the sum of the variances of all corners goes down, in square millimetres. */
function lessens({ from, to }: Pair, { outline, covariance }: FittedOutline): number {
  const slopes = slopesOf({ corners: [from, to] }, outline);
  const moved = covariance.map((row) =>
    slopes.reduce((sum, { unknown, by }) => sum + (row[unknown] ?? 0) * by, 0),
  );
  const own = slopes.reduce((sum, { unknown, by }) => sum + (moved[unknown] ?? 0) * by, 0);
  return moved.reduce((sum, it) => sum + it * it, 0) / (TAPE_VARIANCE + own);
}

/** One ordinary error of the corner that is least sure, in millimetres. */
function furthestOff({ outline, covariance }: FittedOutline): number {
  const at = (unknown: number | undefined): number =>
    unknown === undefined ? 0 : Math.max(0, covariance[unknown]?.[unknown] ?? 0);
  return Math.max(
    ...outline.map((_, corner) => {
      const [x, y] = unknownsOf(corner);
      return Math.sqrt(at(x) + at(y));
    }),
  );
}

/** Every pair of corners that a tape can join in a straight line over the floor. */
function freeDiagonals(outline: Polygon, taped: readonly MeasuredDiagonal[]): readonly Pair[] {
  const done = new Set(taped.flatMap(({ from, to }) => [`${from} ${to}`, `${to} ${from}`]));
  return [...outline.keys()].flatMap((from) =>
    [...outline.keys()]
      .filter((to) => to > from + 1 && (from !== 0 || to !== outline.length - 1))
      .filter((to) => !done.has(`${from} ${to}`) && inSight(outline, from, to))
      .map((to) => ({ from, to })),
  );
}

/** A tape is pulled at least 5 cm past the corners between. */
const PAST = 50;

function inSight(outline: Polygon, from: number, to: number): boolean {
  const [a, b] = [outline[from], outline[to]];
  if (a === undefined || b === undefined) return false;
  if (!containsPoint(outline, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2])) return false;
  return edgesOf(outline).every(([c, d], wall) => {
    const ends = [wall, (wall + 1) % outline.length];
    return ends.includes(from) || ends.includes(to) || segmentDistance(a, b, c, d) >= PAST;
  });
}
