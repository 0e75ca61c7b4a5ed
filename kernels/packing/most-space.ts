import { forbiddenSpans } from "./forbidden-spans.ts";
import { frameOf } from "./frame-of.ts";
import { narrow } from "./hull-walls.ts";
import type { Surroundings } from "./obstacles.ts";
import type { Gaps, Piece } from "./packing-types.ts";
import type { Frame } from "./strips.ts";

/** A rectangle as it may lie in the frame: along the axis or across it. Lengths in millimetres. */
export type Turn = {
  readonly frame: Frame;
  readonly width: number;
  readonly height: number;
  /** how much wider and higher it is with half a gap on each side */
  readonly gapX: number;
  readonly gapY: number;
  /** lower edges at which an obstacle is just cleared, from below and from above */
  readonly stops: readonly number[];
};

/** One axis: the floor turned by −axis, and the two turns of the rectangle in it. */
export type MostSpace = { readonly axis: number; readonly turns: readonly [Turn, Turn] };

export function mostSpace(piece: Piece, gaps: Gaps, surroundings: Surroundings, axis: number): MostSpace {
  return { axis, turns: [turnOf("length", gaps.end, gaps.side), turnOf("width", gaps.side, gaps.end)] };

  function turnOf(along: "length" | "width", gapX: number, gapY: number): Turn {
    const frame = frameOf(piece, gaps, surroundings, axis, along);
    return { frame, width: frame.width, height: frame.height, gapX, gapY, stops: stopsOf(frame) };
  }
}

function stopsOf({ obstacles, height, firstAcross, lastAcross }: Frame): readonly number[] {
  const stops = new Set<number>();
  for (let i = 0; i < obstacles.count; i++) {
    const reach = obstacles.distance[i]!;
    for (const y of [obstacles.low[i]! - reach - height, obstacles.high[i]! + reach])
      if (y > firstAcross && y < lastAcross) stops.add(y);
  }
  return [...stops].sort((a, b) => a - b);
}

/** Where left edges may lie: intervals as [from, to] pairs in order. */
export type Rooms = readonly number[];

/**
 * Left edges that some lower edge in [low, high] allows: all of them and, between two heights, a little more. Each
 * obstacle forbids a convex set, so what it forbids at both heights it forbids at every height between.
 */
export function roomsBetween(frame: Frame, low: number, high: number): Rooms {
  const spans = spansAt(frame, low);
  if (high > low) keepCommon(spans, spansAt(frame, high));
  const room = { first: frame.firstAlong, last: frame.lastAlong };
  narrow(frame.walls, low, high, "anywhere", room);
  return openParts(spans, room.first, room.last);
}

function spansAt(frame: Frame, low: number): Float64Array {
  const spans = new Float64Array(2 * frame.obstacles.count);
  forbiddenSpans(frame.obstacles, low, low + frame.height, frame.width, spans);
  return spans;
}

function keepCommon(spans: Float64Array, others: Float64Array): void {
  for (let i = 0; i < spans.length; i += 2) {
    spans[i] = Math.max(spans[i]!, others[i]!);
    spans[i + 1] = Math.min(spans[i + 1]!, others[i + 1]!);
  }
}

/** What the open spans leave of [first, last]. */
export function openParts(spans: Float64Array, first: number, last: number): Rooms {
  const order: number[] = [];
  for (let i = 0; i < spans.length; i += 2)
    if (spans[i]! < spans[i + 1]! && spans[i + 1]! > first && spans[i]! < last) order.push(i);
  order.sort((a, b) => spans[a]! - spans[b]!);
  const open: number[] = [];
  let at = first;
  for (const i of order) {
    if (spans[i]! >= at) open.push(at, spans[i]!);
    at = Math.max(at, spans[i + 1]!);
  }
  if (at <= last) open.push(at, last);
  return open;
}
