import { rotateAboutOrigin } from "#kernels/geometry";
import type { Filling } from "./fill-frame.ts";
import { forbiddenSpans } from "./forbidden-spans.ts";
import { gridOf, stackOnGrid } from "./grid-lines.ts";
import { narrow } from "./hull-walls.ts";
import { mostInLine } from "./most-in-line.ts";
import type { Line, Placed } from "./packing-types.ts";
import { type SettledLine, settleLines } from "./settle-lines.ts";
import type { StackedLine } from "./stack-lines.ts";
import type { Frame } from "./strips.ts";

type Way = { readonly direction: number; readonly along: "length" | "width" };
type PlacedLines = { readonly grid: 10 | 1 | 0; readonly lines: readonly Line[] };

/** The lines of all wings on the coarsest grid that keeps their count, turned back into the hall. */
export function placedLines(wings: readonly Filling[], way: Way): PlacedLines {
  for (const step of [10, 1] as const) {
    const lines = wings.map(({ strips, lower }) => {
      const grid = gridOf(strips.frame, step);
      const found = stackOnGrid(grid, strips, lower);
      return found === null ? null : inHall(strips.frame, way, settleLines(grid, strips, found));
    });
    if (lines.every((each) => each !== null)) return { grid: step, lines: inOrder(lines.flat()) };
  }
  const exact = wings.map(({ strips: { frame }, lower }) =>
    inHall(
      frame,
      way,
      lower.lines.map((line) => exactLine(frame, line)),
    ),
  );
  return { grid: 0, lines: inOrder(exact.flat()) };
}

function inOrder(lines: readonly Line[]): readonly Line[] {
  return lines.toSorted((a, b) => a.offset - b.offset || (a.starts[0] ?? 0) - (b.starts[0] ?? 0));
}

function exactLine(frame: Frame, { at, holds }: StackedLine): SettledLine {
  const spans = new Float64Array(2 * frame.obstacles.count);
  forbiddenSpans(frame.obstacles, at, at + frame.height, frame.width, spans);
  const room = { first: frame.firstAlong, last: frame.lastAlong };
  narrow(frame.walls, at, at, "throughout", room);
  const places: number[] = [];
  mostInLine(room.first, room.last, frame.pitchAlong, spans, places);
  return { at: at - frame.bottom, starts: places.slice(0, holds).map((place) => place - frame.left) };
}

function inHall(frame: Frame, way: Way, lines: readonly SettledLine[]): readonly Line[] {
  return lines.map(({ at, starts }) => ({
    offset: at,
    starts,
    pieces: starts.map((start) => placedAt(frame, way, start, at)),
  }));
}

/** A rectangle by its lower left corner, measured from that of the frame. */
function placedAt(frame: Frame, way: Way, start: number, at: number): Placed {
  const [x, y] = [frame.left + start + frame.width / 2, frame.bottom + at + frame.height / 2];
  const centre = rotateAboutOrigin([x, y], way.direction);
  return { centre, angle: (way.direction + (way.along === "length" ? 0 : 90)) % 180 };
}
