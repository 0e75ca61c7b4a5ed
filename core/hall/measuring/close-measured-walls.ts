import { crossesItself, type Polygon } from "#kernels/geometry";
import { bad, good, type LengthUnits, problem, type Result } from "#core/words";
import { snapPoint } from "../floor-snap.ts";
import { CLOSES_WITHIN, floorFromWalls } from "../floor-start.ts";
import type { AdjustedMeasure, ClosedWalls, Suspect } from "./closed-walls-types.ts";
import { closedSentences, doubtSays, measureName } from "./closed-in-words.ts";
import { firstWalks } from "./first-walks.ts";
import { type FittedOutline, fitOutline } from "./fit-outline.ts";
import { leaningOutline } from "./leaning-outline.ts";
import { type Doubt, likelyWrong, standsOut } from "./likely-wrong.ts";
import { predicted } from "./measure-of.ts";
import {
  type Measure,
  type MeasuredDiagonal,
  type MeasuredWall,
  measuresOf,
  turnIsKnown,
  turnOf,
} from "./measured-walls.ts";
import { nextDiagonal } from "./next-diagonal.ts";
import { tapeProblems } from "./tape-problems.ts";

/**
 * A hall from the lengths of its walls, walked once round, and of diagonals, millimetres. Corners are taken for right
 * angles to the left unless told, or left to the lengths and diagonals where only the side is known; a right angle counts as sure to 0.25°, another angle to 1.5°, a length to 10 mm,
 * and the outline is the one that departs from all of them least (weighted least squares). What is likely wrong is
 * found by leaving out one measure at a time; it is looked for where a measure stands out by 3.29 ordinary errors or
 * the walk misses its start by more than 50 mm. Where no one slip explains it and the lengths agree with one another in
 * a hall whose corners are not square, that hall is taken. Problems: those of `tapeProblems`, and "walls-do-not-meet" where no
 * hall fits.
 */
export function closeMeasuredWalls(
  walls: readonly MeasuredWall[],
  diagonals: readonly MeasuredDiagonal[] = [],
  units: LengthUnits = "metric",
): Result<ClosedWalls> {
  const problems = tapeProblems(walls, diagonals, units);
  if (problems.length > 0) return bad(...problems);
  const first = bestFit(walls, diagonals);
  if (first === undefined) {
    const says = "No hall fits these walls: they cross one another or do not meet.";
    const next = "Check the order of the walls and where you turned the other way, then measure again.";
    return bad(problem("walls-do-not-meet", "walls", says, next));
  }
  const { measures, fitted } = first;
  const open = openCorners(measures, fitted);
  const closingError = gapOf(walls, fitted);
  const unchecked = nothingChecks(measures, fitted);
  const closes =
    closingError <= CLOSES_WITHIN && open.length === 0 && !unchecked && !standsOut(measures, fitted);
  const wrong = standsOut(measures, fitted) || closingError > CLOSES_WITHIN;
  const doubts = wrong ? likelyWrong(measures, fitted) : [];
  const leaning = wrong ? leaningOutline(measures, fitted) : undefined;
  const settled = doubts.filter((it) => it.settles);
  // several corners that are not square outweigh a slip that does not explain everything
  const leans = leaning !== undefined && settled.length === 0;
  const taken = leans ? leaning.fitted : fitted;
  const suspects = leans ? [] : settled.length > 0 ? settled : doubts;
  const told = {
    closingError,
    closes,
    suspects: suspects.map((it) => suspectOf(it, walls.length, units)),
    settled: settled.length > 0,
    notSquareBy: leaning?.degrees ?? null,
    open,
    unchecked,
  };
  const halls = [
    ...settled.map((it) => it.outline),
    ...(leaning === undefined ? [] : [leaning.fitted.outline]),
  ];
  return good({
    ...told,
    outline: wholeMillimetres(taken.outline),
    outlineWithout: suspects[0] === undefined ? null : wholeMillimetres(suspects[0].outline),
    measures: measures.map((it, index) => adjustedOf(it, index, taken, walls.length)),
    next: nextDiagonal(taken, diagonals, leans ? [] : halls, { open, unchecked }, units),
    sentences: closedSentences(told, diagonals.length, units),
  });
}

/** The outline with the least misfit of those that can be, from each of the first walks until one fits well. */
function bestFit(walls: readonly MeasuredWall[], diagonals: readonly MeasuredDiagonal[]) {
  let best: { readonly measures: readonly Measure[]; readonly fitted: FittedOutline } | undefined;
  for (const { turns, outline } of firstWalks(walls)) {
    const measures = measuresOf(walls, diagonals, turns);
    const fitted = walls.every(turnIsKnown)
      ? fitOutline(measures, outline)
      : fitTightening(measures, outline);
    if (fitted === undefined || !canBe(walls, fitted)) continue;
    if (best === undefined || fitted.misfit < best.fitted.misfit) best = { measures, fitted };
    if (fitted.misfit < measures.length && !standsOut(measures, fitted)) break;
  }
  return best;
}

/** Degrees past straight on that an untold turn may come out to the other side: more contradicts what was told. */
const OTHER_SIDE = 3;

/** No walls cross, and every untold turn goes to the side that was told. */
function canBe(walls: readonly MeasuredWall[], { outline }: FittedOutline): boolean {
  if (crossesItself(wholeMillimetres(outline)) !== null) return false;
  return walls.every(
    (wall, index) =>
      turnIsKnown(wall) || foundTurn(outline, index) * Math.sign(turnOf(wall) || 1) > -OTHER_SIDE,
  );
}

/** At the end of the wall, in degrees. */
function foundTurn(outline: Polygon, wall: number): number {
  const corners = [wall, (wall + 1) % outline.length, (wall + 2) % outline.length];
  return (predicted(outline, { corners }).value * 180) / Math.PI;
}

/**
 * With lengths first a hundred times as loose, then ten times, then as they are: a first walk that is metres from
 * closing is drawn together little by little. Of 800 random floors of 4 to 8 corners without one known angle, 25
 * are given up.
 */
function fitTightening(measures: readonly Measure[], first: Polygon): FittedOutline | undefined {
  let outline = first;
  for (const looser of [100, 10]) {
    const loose = measures.map((it) => (it.kind === "turn" ? it : { ...it, error: it.error * looser }));
    outline = fitOutline(loose, outline)?.outline ?? outline;
  }
  return fitOutline(measures, outline);
}

function wholeMillimetres(outline: Polygon): Polygon {
  return outline.map((it) => snapPoint(it, 1));
}

/** An untold turn that may ordinarily be off by more is open: 2°, in radians. */
const OPEN_FROM = Math.PI / 90;

function openCorners(measures: readonly Measure[], { checked }: FittedOutline): readonly number[] {
  return measures
    .flatMap(({ told, index, error }, place) =>
      !told && error * Math.sqrt(1 - (checked[place] ?? 0)) > OPEN_FROM ? [index] : [],
    )
    .sort((a, b) => a - b);
}

/** Whether every length could be otherwise and no other measure would contradict it. */
function nothingChecks(measures: readonly Measure[], { checked }: FittedOutline): boolean {
  return measures.every(({ kind }, place) => kind === "turn" || (checked[place] ?? 0) < CHECKS_FROM);
}

/** Walked as told, an untold turn taken as it was found. */
function gapOf(walls: readonly MeasuredWall[], { outline }: FittedOutline): number {
  const turns = walls.map((wall, index) => (turnIsKnown(wall) ? turnOf(wall) : foundTurn(outline, index)));
  return floorFromWalls(walls.map(({ length }, index) => ({ length, turn: turns[index] ?? 90 })))
    .closingError;
}

function suspectOf({ measure, others }: Doubt, corners: number, units: LengthUnits): Suspect {
  const { kind, index } = measure;
  const [measured, said] = [shown(measure, measure.value), shown(measure, others)];
  const figures = { kind, index, name: measureName(measure, corners), measured, others: said };
  return { ...figures, offBy: roundedTenth(measured - said), says: doubtSays(figures, units) };
}

/** Of a slip in a measure, less than a thousandth shows: nothing checks it. */
const CHECKS_FROM = 1e-3;

/** Baarda's 4.13: such a slip is noticed four times in five at 3.29 (from memory). */
const NOTICED = 4.13;

function adjustedOf(
  measure: Measure,
  place: number,
  fitted: FittedOutline,
  corners: number,
): AdjustedMeasure {
  const { kind, index } = measure;
  const checked = fitted.checked[place] ?? 0;
  return {
    kind,
    index,
    name: measureName(measure, corners),
    measured: measure.told ? shown(measure, measure.value) : null,
    adjusted: shown(measure, predicted(fitted.outline, measure).value),
    noticedFrom:
      checked < CHECKS_FROM ? null : shown(measure, (NOTICED * measure.error) / Math.sqrt(checked)),
  };
}

/** Whole millimetres, or degrees to a tenth. */
function shown({ kind }: Measure, value: number): number {
  return kind === "turn" ? roundedTenth((value * 180) / Math.PI) : Math.round(value);
}

function roundedTenth(value: number): number {
  return Math.round(value * 10) / 10;
}
