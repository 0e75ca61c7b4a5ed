// Example: two marks for the known distance, then a corner a tap; a third mark for a distance moves its nearer end.
import type { Point } from "#kernels/geometry";
import type { Trace, TypedDistance } from "./measuring.ts";

/** What the next mark is for. */
export type Marking = "known" | "corners" | "check";

/** What is missing first: the known distance, then the corners. */
export function nextMarking({ known }: Trace): Marking {
  return known.from === null || known.to === null ? "known" : "corners";
}

export function mark(trace: Trace, marking: Marking, at: Point): Trace {
  const [x, y] = [Math.round(at[0]), Math.round(at[1])];
  switch (marking) {
    case "known":
      return { ...trace, known: withEnd(trace.known, [x, y]) };
    case "check":
      return { ...trace, check: withEnd(trace.check, [x, y]) };
    case "corners":
      return { ...trace, corners: [...trace.corners, [x, y]] };
  }
}

export function takeCornerBack(trace: Trace): Trace {
  return { ...trace, corners: trace.corners.slice(0, -1) };
}

/**
 * Another picture has other marks; the distances that were typed stay. Where the picture before was lost, one of the
 * same size is taken for it, and its marks stay too.
 */
export function withPicture(trace: Trace, size: NonNullable<Trace["size"]>, wasGone = false): Trace {
  const { size: before } = trace;
  if (wasGone && before?.width === size.width && before.height === size.height) return trace;
  const unmarked = { from: null, to: null };
  return {
    ...trace,
    size,
    known: { ...trace.known, ...unmarked },
    check: { ...trace.check, ...unmarked },
    corners: [],
  };
}

function withEnd(distance: TypedDistance, at: Point): TypedDistance {
  const { from, to } = distance;
  if (from === null) return { ...distance, from: at };
  if (to === null) return { ...distance, to: at };
  return far(from, at) < far(to, at) ? { ...distance, from: at } : { ...distance, to: at };
}

function far(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
