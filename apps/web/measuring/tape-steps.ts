// Example: walls A–B and B–C are typed, "Next wall" opens C–D; "That was the last wall" drops a blank one at the end.
// Invariant: no step but taking a diagonal away lets go of anything that was typed; a wall can be put back.
import { blankWall, type Tape, type TypedDiagonal, type TypedWall } from "./measuring.ts";
import { isBlank } from "./read-typed-length.ts";

export function changeWall(tape: Tape, index: number, change: Partial<TypedWall>): Tape {
  return { ...tape, walls: tape.walls.map((it, at) => (at === index ? { ...it, ...change } : it)) };
}

/** To the wall after the one that is being entered; a new one after the last. */
export function nextWall(tape: Tape): Tape {
  const next = (tape.at ?? tape.walls.length - 1) + 1;
  const walls = next < tape.walls.length ? tape.walls : [...tape.walls, blankWall];
  return { ...tape, walls, at: next };
}

/** Once round. A last wall that nothing was typed into was no wall. */
export function lastWall(tape: Tape): Tape {
  const last = tape.walls.at(-1);
  const blank = last !== undefined && isBlank(last);
  return { ...tape, walls: blank ? tape.walls.slice(0, -1) : tape.walls, at: null, done: true };
}

/** There is a wall more after all. */
export function oneMoreWall(tape: Tape): Tape {
  return { ...tape, walls: [...tape.walls, blankWall], at: tape.walls.length, done: false };
}

/** A wall that was forgotten, before the one of that index. */
export function insertWall(tape: Tape, index: number, wall = blankWall): Tape {
  const shifted = (corner: number): number => (corner > index ? corner + 1 : corner);
  return {
    ...tape,
    walls: tape.walls.toSpliced(index, 0, wall),
    diagonals: tape.diagonals.map((it) => ({ ...it, from: shifted(it.from), to: shifted(it.to) })),
    at: index,
  };
}

/** Without that wall: the corner at its end goes with it, and diagonals to later corners keep theirs. */
export function takeWallAway(tape: Tape, index: number): Tape {
  const shifted = (corner: number): number => (corner > index ? corner - 1 : corner);
  const walls = tape.walls.toSpliced(index, 1);
  const diagonals = tape.diagonals.map((it) => ({ ...it, from: shifted(it.from), to: shifted(it.to) }));
  const taken = tape.walls[index];
  // a blank wall is nothing to be put back
  const gone = taken === undefined || isBlank(taken) ? tape.gone : { index, wall: taken };
  if (walls.length === 0) return { ...tape, walls: [blankWall], diagonals, gone, at: 0, done: false };
  return { ...tape, walls, diagonals, gone, at: tape.done ? null : Math.min(index, walls.length - 1) };
}

/** The wall that was taken away last, where it was. */
export function putWallBack(tape: Tape): Tape {
  if (tape.gone === null) return tape;
  const index = Math.min(tape.gone.index, tape.walls.length);
  const put = insertWall(tape, index, tape.gone.wall);
  return { ...put, gone: null, at: tape.done ? null : index };
}

/** The diagonal with that reading, begun where there is none yet. */
export function changeDiagonal(tape: Tape, changed: TypedDiagonal): Tape {
  const at = tape.diagonals.findIndex((it) => isSame(it, changed));
  const diagonals = at < 0 ? [...tape.diagonals, changed] : tape.diagonals.with(at, changed);
  return { ...tape, diagonals };
}

export function takeDiagonalAway(tape: Tape, gone: Pick<TypedDiagonal, "from" | "to">): Tape {
  return { ...tape, diagonals: tape.diagonals.filter((it) => !isSame(it, gone)) };
}

export function diagonalOf(tape: Tape, { from, to }: Pick<TypedDiagonal, "from" | "to">): TypedDiagonal {
  return tape.diagonals.find((it) => isSame(it, { from, to })) ?? { from, to, length: "", inches: "" };
}

function isSame(a: Pick<TypedDiagonal, "from" | "to">, b: Pick<TypedDiagonal, "from" | "to">): boolean {
  return (a.from === b.from && a.to === b.to) || (a.from === b.to && a.to === b.from);
}
