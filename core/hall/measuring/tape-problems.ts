import { formatLength, type LengthUnits, problem, type Problem } from "#core/words";
import { LONGEST_FLOOR } from "../check-floor.ts";
import { cornerName } from "../corner-names.ts";
import { type MeasuredDiagonal, type MeasuredWall, turnIsKnown, turnOf } from "./measured-walls.ts";

/** More walls than a tape is patient for; so many still adjust within a second. */
const MOST_WALLS = 60;
const MOST_DIAGONALS = 200;

/**
 * What is wrong with the figures themselves. Problems: "walls-count", "measure-length", "turn-out-of-range",
 * "turns-do-not-close", "diagonal-corners", "too-many-diagonals".
 */
export function tapeProblems(
  walls: readonly MeasuredWall[],
  diagonals: readonly MeasuredDiagonal[],
  units: LengthUnits,
): readonly Problem[] {
  if (walls.length < 3 || walls.length > MOST_WALLS) return [countProblem(walls.length)];
  if (diagonals.length > MOST_DIAGONALS) {
    const says = `There are ${diagonals.length} diagonals.`;
    return [problem("too-many-diagonals", "diagonals", says, `Give at most ${MOST_DIAGONALS}.`)];
  }
  const figures = [
    ...walls.flatMap((wall, index) => [
      ...lengthProblems(
        wall.length,
        `walls[${index}].length`,
        `Wall ${cornerName(index)}–${cornerName((index + 1) % walls.length)}`,
        units,
      ),
      ...turnProblems(turnOf(wall), `walls[${index}].turn`, index),
    ]),
    ...diagonals.flatMap((it, index) => diagonalProblems(it, index, walls.length, units)),
  ];
  return figures.length > 0 ? figures : sumProblems(walls);
}

function countProblem(count: number): Problem {
  const says = `There ${count === 1 ? "is 1 wall" : `are ${count} walls`}.`;
  return problem("walls-count", "walls", says, `Measure from 3 to ${MOST_WALLS} walls, once round the hall.`);
}

function lengthProblems(length: number, place: string, name: string, units: LengthUnits): readonly Problem[] {
  if (length >= 1 && length <= LONGEST_FLOOR) return [];
  const says = Number.isFinite(length)
    ? `${name} is ${formatLength(length, units)} long.`
    : `${name} has no length.`;
  return [
    problem(
      "measure-length",
      place,
      says,
      `Give a length over nothing and up to ${formatLength(LONGEST_FLOOR, units)}.`,
    ),
  ];
}

function turnProblems(turn: number, place: string, index: number): readonly Problem[] {
  if (Math.abs(turn) < 180) return [];
  const says = `The turn at the end of wall ${index + 1} is ${Number.isFinite(turn) ? `${turn}°` : "not a number"}.`;
  const next = "Give how far you turn there: 90 to the left, −90 to the right, less than 180.";
  return [problem("turn-out-of-range", place, says, next)];
}

function diagonalProblems(
  { from, to, length }: MeasuredDiagonal,
  index: number,
  corners: number,
  units: LengthUnits,
): readonly Problem[] {
  const place = `diagonals[${index}]`;
  const isCorner = (it: number): boolean => Number.isInteger(it) && it >= 0 && it < corners;
  if (!isCorner(from) || !isCorner(to)) {
    const says = `Diagonal ${index + 1} runs from or to a corner that the hall does not have.`;
    const next = `Name two of the corners ${cornerName(0)} to ${cornerName(corners - 1)}.`;
    return [problem("diagonal-corners", place, says, next)];
  }
  const apart = Math.abs(from - to);
  if (apart === 0 || apart === 1 || apart === corners - 1) {
    const says = `Diagonal ${index + 1} runs from corner ${cornerName(from)} to ${cornerName(to)}, which is ${apart === 0 ? "the same corner" : "a wall"}.`;
    return [problem("diagonal-corners", place, says, "Measure to a corner that no wall joins to the first.")];
  }
  return lengthProblems(length, `${place}.length`, `Diagonal ${cornerName(from)}–${cornerName(to)}`, units);
}

/** Once round is 360°; eleven corners told by eye are some degrees off. */
const ROUND_WITHIN = 20;

function sumProblems(walls: readonly MeasuredWall[]): readonly Problem[] {
  const sum = walls.reduce((total, wall) => total + (turnIsKnown(wall) ? turnOf(wall) : 0), 0);
  const untold = walls.filter((wall) => !turnIsKnown(wall));
  const [left, right] = [
    untold.filter((it) => turnOf(it) > 0).length,
    untold.filter((it) => turnOf(it) <= 0).length,
  ];
  // an untold turn may be anything from 0° to 180° to its side
  const reaches = (round: number): boolean =>
    round >= sum - 180 * right - ROUND_WITHIN && round <= sum + 180 * left + ROUND_WITHIN;
  if (reaches(360) || reaches(-360)) return [];
  const says = `The turns add up to ${Math.round(Math.abs(sum))}°, and once round is 360°.`;
  const next = "Tell at which corners you turned the other way, or how far where it was not a right angle.";
  return [problem("turns-do-not-close", "walls", says, next)];
}
