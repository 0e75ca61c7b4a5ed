// Example: "8", "12" and "" read as two walls; after them one stands 14.42 m from where one began.
// Invariant: walls are read in order up to the first that cannot be read; nothing after it is drawn.
import { floorFromWalls, type MeasuredDiagonal, type MeasuredWall } from "#core/hall";
import { bad, good, type LengthUnits, type Problem, problem, type Result } from "#core/words";
import type { Point } from "#kernels/geometry";
import { readDegrees } from "../floor/read-degrees.ts";
import type { Tape, TypedWall } from "./measuring.ts";
import { isBlank, readTypedLength } from "./read-typed-length.ts";

export type TapeRead = {
  /** up to the first that cannot be read */
  readonly walls: readonly MeasuredWall[];
  /** whether that is all of them */
  readonly whole: boolean;
  /** by wall; undefined where it reads, or where nothing is typed yet */
  readonly problems: readonly (Problem | undefined)[];
  /** corners walked so far, the last being where the last wall ends */
  readonly path: readonly Point[];
  /** millimetres from there to where one began; null where an angle is not known */
  readonly gap: number | null;
  readonly diagonals: readonly MeasuredDiagonal[];
  /** by diagonal */
  readonly diagonalProblems: readonly (Problem | undefined)[];
};

export function readTape(tape: Tape, units: LengthUnits): TapeRead {
  const read = tape.walls.map((it, index) => readWall(it, units, `walls[${index}]`));
  const firstBad = read.findIndex((it) => !it.ok);
  const walls = (firstBad < 0 ? read : read.slice(0, firstBad)).flatMap((it) => (it.ok ? [it.value] : []));
  const stop = { length: 0, turn: 0 };
  const { outline, closingError } = floorFromWalls([
    ...walls.map(({ length, turn = 90 }) => ({ length, turn })),
    stop,
  ]);
  const across = tape.diagonals.map((it, index) => readTypedLength(it, units, `diagonals[${index}].length`));
  return {
    walls,
    whole: firstBad < 0,
    problems: read.map((it, index) => problemOf(it, tape.walls[index])),
    path: outline,
    // the turn at the end of the last wall does not matter yet
    gap: walls.slice(0, -1).some((it) => it.turnKnown === false) ? null : closingError,
    diagonals: tape.diagonals.flatMap(({ from, to }, index) => {
      const length = across[index];
      return length?.ok === true ? [{ from, to, length: length.value }] : [];
    }),
    diagonalProblems: across.map((it, index) => {
      const typed = tape.diagonals[index];
      return it.ok || typed === undefined || isBlank(typed) ? undefined : it.problems[0];
    }),
  };
}

function problemOf(read: Result<MeasuredWall>, typed: TypedWall | undefined): Problem | undefined {
  if (read.ok || typed === undefined) return undefined;
  return isBlank(typed) ? read.problems.find((it) => it.code === "turn-unreadable") : read.problems[0];
}

function readWall(typed: TypedWall, units: LengthUnits, place: string): Result<MeasuredWall> {
  const length = readTypedLength(typed, units, `${place}.length`);
  const turn = readTurn(typed, place);
  if (!length.ok) return length;
  return turn.ok ? good({ length: length.value, ...turn.value }) : turn;
}

function readTurn(
  { turn, degrees }: TypedWall,
  place: string,
): Result<Pick<MeasuredWall, "turn" | "turnKnown">> {
  const side = turn.startsWith("left") ? 1 : -1;
  if (turn === "left" || turn === "right") return good({ turn: 90 * side });
  if (degrees.trim() === "") return good({ turn: 90 * side, turnKnown: false });
  const read = readDegrees(degrees);
  if (read !== null && read < 180) return good({ turn: read * side });
  const says = `“${degrees}” is not an angle to turn by.`;
  const next = "Give 0 to 179, where 90 is square, or leave it empty if you cannot tell.";
  return bad(problem("turn-unreadable", `${place}.turn`, says, next));
}
