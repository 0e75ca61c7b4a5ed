import { crossesItself } from "#kernels/geometry";
import { bad, good, problem, type Result } from "#core/words";
import { snapPoint } from "../floor-snap.ts";
import { CLOSES_WITHIN, floorFromWalls } from "../floor-start.ts";
import type { AdjustedMeasure, ClosedWalls, Suspect } from "./closed-walls-types.ts";
import { closedSentences, doubtSays, measureName } from "./closed-in-words.ts";
import { type FittedOutline, fitOutline } from "./fit-outline.ts";
import { leaningOutline } from "./leaning-outline.ts";
import { type Doubt, likelyWrong, standsOut } from "./likely-wrong.ts";
import { predicted } from "./measure-of.ts";
import {
  type Measure,
  type MeasuredDiagonal,
  type MeasuredWall,
  measuresOf,
  turnOf,
} from "./measured-walls.ts";
import { tapeProblems } from "./tape-problems.ts";

/**
 * A hall from the lengths of its walls, walked once round, and of diagonals, millimetres. Corners are taken for right
 * angles to the left unless told; a right angle counts as sure to 0.25°, another angle to 1.5°, a length to 10 mm,
 * and the outline is the one that departs from all of them least (weighted least squares). What is likely wrong is
 * found by leaving out one measure at a time; it is looked for where a measure stands out by 3.29 ordinary errors or
 * the walk misses its start by more than 50 mm. Where no one slip explains it and the lengths agree with one another in
 * a hall whose corners are not square, that hall is taken. Problems: those of `tapeProblems`, and "walls-do-not-meet" where no
 * hall fits.
 */
export function closeMeasuredWalls(
  walls: readonly MeasuredWall[],
  diagonals: readonly MeasuredDiagonal[] = [],
): Result<ClosedWalls> {
  const problems = tapeProblems(walls, diagonals);
  if (problems.length > 0) return bad(...problems);
  const walked = floorFromWalls(walls.map((wall) => ({ length: wall.length, turn: turnOf(wall) })));
  const measures = measuresOf(walls, diagonals);
  const fitted = fitOutline(measures, walked.outline);
  const outline = fitted?.outline.map((it) => snapPoint(it, 1));
  if (fitted === undefined || outline === undefined || crossesItself(outline) !== null) {
    const says = "No hall fits these walls: they cross one another or do not meet.";
    const next = "Check the order of the walls and where you turned the other way, then measure again.";
    return bad(problem("walls-do-not-meet", "walls", says, next));
  }
  const { closingError } = walked;
  const closes = closingError <= CLOSES_WITHIN && !standsOut(measures, fitted);
  const doubts = closes ? [] : likelyWrong(measures, fitted);
  const leaning = closes ? undefined : leaningOutline(measures, fitted);
  const settled = doubts.filter((it) => it.settles);
  // several corners that are not square outweigh a slip that does not explain everything
  const leans = leaning !== undefined && settled.length === 0;
  const suspects = leans
    ? []
    : (settled.length > 0 ? settled : doubts).map((it) => suspectOf(it, walls.length));
  const told = {
    closingError,
    closes,
    suspects,
    settled: settled.length > 0,
    notSquareBy: leaning?.degrees ?? null,
  };
  const taken = leans ? leaning.fitted : fitted;
  return good({
    ...told,
    outline: taken.outline.map((it) => snapPoint(it, 1)),
    outlineWithout: leans ? null : ((settled[0] ?? doubts[0])?.outline.map((it) => snapPoint(it, 1)) ?? null),
    measures: measures.map((it, index) => adjustedOf(it, index, taken, walls.length)),
    sentences: closedSentences(told, diagonals.length),
  });
}

function suspectOf({ measure, others }: Doubt, corners: number): Suspect {
  const { kind, index } = measure;
  const [measured, said] = [shown(measure, measure.value), shown(measure, others)];
  const figures = { kind, index, name: measureName(measure, corners), measured, others: said };
  return { ...figures, offBy: roundedTenth(measured - said), says: doubtSays(figures) };
}

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
    measured: shown(measure, measure.value),
    adjusted: shown(measure, predicted(fitted.outline, measure).value),
    noticedFrom: checked < 1e-3 ? null : shown(measure, (NOTICED * measure.error) / Math.sqrt(checked)),
  };
}

/** Whole millimetres, or degrees to a tenth. */
function shown({ kind }: Measure, value: number): number {
  return kind === "turn" ? roundedTenth((value * 180) / Math.PI) : Math.round(value);
}

function roundedTenth(value: number): number {
  return Math.round(value * 10) / 10;
}
