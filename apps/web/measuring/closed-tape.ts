// Example: taped 8.01, 12.00, 7.99 and 12.00 m are drawn 8.00, 12.00, 8.00 and 12.00 m, and both stand side by side.
// Invariant: nothing is drawn otherwise than taped without a row that says by how much.
import {
  type ClosedWalls,
  closeMeasuredWalls,
  cornersOf,
  floorDraft,
  floorProblems,
  straightened,
} from "#core/hall";
import type { LengthUnits, Problem } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import type { Tape } from "./measuring.ts";
import type { TapeRead } from "./read-tape.ts";

/** One measure as it was taped and as it is drawn: millimetres, or degrees for a turn. */
export type DrawnMeasure = {
  readonly name: string;
  readonly kind: "wall" | "diagonal" | "turn";
  readonly taped: number | null;
  readonly drawn: number;
  readonly isSuspect: boolean;
};

export type ClosedTape =
  | {
      readonly ok: true;
      readonly closed: ClosedWalls;
      readonly outline: Polygon;
      readonly drawn: readonly DrawnMeasure[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Degrees within which a corner of a taped hall is drawn square: 10 cm over 12 m. */
export const TAPED_SQUARE = 0.5;

export function closedTape(tape: Tape, read: TapeRead, units: LengthUnits): ClosedTape {
  const found = closeMeasuredWalls(read.walls, read.diagonals, units);
  if (!found.ok) return found;
  const closed = found.value;
  const without = tape.without && closed.suspects.length === 1 ? closed.outlineWithout : null;
  const fitted = without ?? closed.outline;
  const outline = tape.square ? straightened(fitted, TAPED_SQUARE, 1) : fitted;
  const problems = floorProblems(floorDraft(outline));
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, closed, outline, drawn: drawnMeasures(closed, outline, read) };
}

function drawnMeasures(closed: ClosedWalls, outline: Polygon, read: TapeRead): readonly DrawnMeasure[] {
  const corners = cornersOf(outline);
  return closed.measures.flatMap(({ kind, index, name, measured }): readonly DrawnMeasure[] => {
    const isSuspect = closed.suspects.some((it) => it.kind === kind && it.index === index);
    if (kind === "turn") {
      const drawn = Math.abs(180 - (corners[index]?.innerAngle ?? 180));
      // a square corner that is drawn square says nothing
      const plain = measured !== null && Math.abs(Math.abs(measured) - drawn) < 0.05;
      return plain
        ? []
        : [{ name, kind, taped: measured === null ? null : Math.abs(measured), drawn, isSuspect }];
    }
    const ends = kind === "wall" ? { from: index, to: (index + 1) % outline.length } : read.diagonals[index];
    return ends === undefined ? [] : [{ name, kind, taped: measured, drawn: far(outline, ends), isSuspect }];
  });
}

function far(outline: Polygon, { from, to }: { readonly from: number; readonly to: number }): number {
  const [a = [0, 0], b = [0, 0]] = [outline[from], outline[to]];
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
