/** Walked round the hall wall by wall: 8.20 m is 8200. Millimetres and degrees. */
export type MeasuredWall = {
  readonly length: number;
  /** at its end, to the left (anticlockwise) above 0; a right angle to the left, 90, unless told */
  readonly turn?: number;
  /** false where only the side is known to which one turns, by the sign of `turn`, and not how far */
  readonly turnKnown?: boolean;
};

/** Straight from one corner to another, by their index: corner 0 is where the first wall begins. */
export type MeasuredDiagonal = { readonly from: number; readonly to: number; readonly length: number };

export type MeasureKind = "wall" | "diagonal" | "turn";

/**
 * One figure that was measured or assumed. The error is how far off it may ordinarily be (one standard error), in the
 * unit of the value: millimetres, or radians for a turn.
 */
export type Measure = {
  readonly kind: MeasureKind;
  /** of the wall, the diagonal, or the corner at which the turn is */
  readonly index: number;
  /** corner indices: a length between two, a turn at the middle one of three */
  readonly corners: readonly number[];
  readonly value: number;
  readonly error: number;
  /** false for a turn that nobody measured or judged */
  readonly told: boolean;
};

const DEGREE = Math.PI / 180;

/** A tape read by one person: a centimetre for sag, hook and skirting board. Common practice, no source. */
const TAPE_ERROR = 10;
/**
 * A corner that looks square is square to a quarter of a degree, 4 cm over 10 m; any other angle is told by eye, to
 * a degree and a half. Guesses.
 */
const SQUARE_ERROR = 0.25 * DEGREE;
const ANGLE_ERROR = 1.5 * DEGREE;
/** An untold turn lies anywhere from 0° to 180° on its side: it pulls less than a millionth of what a length does. */
const UNTOLD_ERROR = 45 * DEGREE;

export function turnOf({ turn = 90 }: MeasuredWall): number {
  return turn;
}

export function turnIsKnown({ turnKnown = true }: MeasuredWall): boolean {
  return turnKnown;
}

/**
 * Walls first, then diagonals, then turns, each in the order in which they were given. An untold turn has the value
 * from which the search begins, in degrees in `begin`.
 */
export function measuresOf(
  walls: readonly MeasuredWall[],
  diagonals: readonly MeasuredDiagonal[],
  begin: readonly number[] = walls.map(turnOf),
): readonly Measure[] {
  const corner = (index: number): number => index % walls.length;
  return [
    ...walls.map(
      ({ length }, index): Measure => ({
        kind: "wall",
        index,
        corners: [index, corner(index + 1)],
        value: length,
        error: TAPE_ERROR,
        told: true,
      }),
    ),
    ...diagonals.map(
      ({ from, to, length }, index): Measure => ({
        kind: "diagonal",
        index,
        corners: [from, to],
        value: length,
        error: TAPE_ERROR,
        told: true,
      }),
    ),
    ...walls.map(
      (wall, index): Measure => ({
        kind: "turn",
        index: corner(index + 1),
        corners: [index, corner(index + 1), corner(index + 2)],
        value: (begin[index] ?? turnOf(wall)) * DEGREE,
        error: turnError(wall),
        told: turnIsKnown(wall),
      }),
    ),
  ];
}

function turnError(wall: MeasuredWall): number {
  if (!turnIsKnown(wall)) return UNTOLD_ERROR;
  return turnOf(wall) % 90 === 0 ? SQUARE_ERROR : ANGLE_ERROR;
}
