import { fillFrame, startFilling } from "./fill-frame.ts";
import { forbiddenSpans } from "./forbidden-spans.ts";
import { narrow } from "./hull-walls.ts";
import { mostInLine } from "./most-in-line.ts";
import type { Frame } from "./strips.ts";

/** Lines on one side of an edge. */
export type Bank = {
  readonly count: number;
  /** whether no lines there hold more */
  readonly sure: boolean;
  /** lower left corners in the frame */
  readonly lines: readonly (readonly (readonly [x: number, y: number])[])[];
};

/** Strips to look at before a bank is taken as it stands. */
const STEPS = 20_000;

/** The most in lines that end at the edge or below it. */
export function bankBelow(frame: Frame, edge: number): Bank {
  const lastAcross = Math.min(frame.lastAcross, edge - frame.height);
  if (lastAcross < frame.firstAcross) return { count: 0, sure: true, lines: [] };
  const part = { ...frame, lastAcross };
  const filling = startFilling(part);
  fillFrame(filling, 0, STEPS);
  const { lower, upper } = filling;
  const lines = lower.lines.map(({ at, holds }) =>
    placesAt(part, at)
      .slice(0, holds)
      .map((x) => [x, at] as const),
  );
  return { count: lower.count, sure: lower.count === upper.count, lines };
}

function placesAt(frame: Frame, at: number): readonly number[] {
  const spans = new Float64Array(2 * frame.obstacles.count);
  forbiddenSpans(frame.obstacles, at, at + frame.height, frame.width, spans);
  const room = { first: frame.firstAlong, last: frame.lastAlong };
  narrow(frame.walls, at, at, "throughout", room);
  const places: number[] = [];
  mostInLine(room.first, room.last, frame.pitchAlong, spans, places);
  return places;
}
