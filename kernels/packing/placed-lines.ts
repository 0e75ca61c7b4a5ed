import { rotateAboutOrigin } from "#kernels/geometry";
import { forbiddenSpans } from "./forbidden-spans.ts";
import { mostInLine } from "./most-in-line.ts";
import type { Line, Placed } from "./packing-types.ts";
import type { Stack } from "./stack-lines.ts";
import type { Frame } from "./strips.ts";

type Way = { readonly direction: number; readonly along: "length" | "width" };

/** The rectangles of a stack, turned back into the frame of the hall. */
export function placedLines(frame: Frame, stack: Stack, way: Way): readonly Line[] {
  return stack.lines.map(({ at, holds }) => ({
    offset: at - frame.firstAcross,
    pieces: placesInLine(frame, at, holds).map((x) => placedAt(frame, way, x, at)),
  }));
}

function placesInLine(frame: Frame, at: number, holds: number): readonly number[] {
  const spans = new Float64Array(2 * frame.obstacles.count);
  forbiddenSpans(frame.obstacles, at, at + frame.height, frame.width, spans);
  const places: number[] = [];
  mostInLine(frame.firstAlong, frame.lastAlong, frame.pitchAlong, spans, places);
  return places.slice(0, holds);
}

/** A rectangle by its lower left corner in the frame. */
export function placedAt(frame: Frame, way: Way, x: number, y: number): Placed {
  const centre = rotateAboutOrigin([x + frame.width / 2, y + frame.height / 2], way.direction);
  return { centre, angle: (way.direction + (way.along === "length" ? 0 : 90)) % 180 };
}
