import type { Bounds } from "#kernels/geometry";
import { forbiddenSpans } from "./forbidden-spans.ts";
import { type HullWalls, narrow } from "./hull-walls.ts";
import { mostInLine } from "./most-in-line.ts";
import type { Obstacles } from "./obstacles.ts";

/** One way of laying lines: along x in the frame, rectangles of width × height. */
export type Frame = {
  readonly walls: HullWalls;
  readonly obstacles: Obstacles;
  /** the boxes of pockets, fixtures and zones before they are cut into obstacles */
  readonly shapes: readonly Bounds[];
  readonly width: number;
  readonly height: number;
  /** least distance of left edges in a line, and of lower edges of lines */
  readonly pitchAlong: number;
  readonly pitchAcross: number;
  /** the least x and y of the turned outline */
  readonly left: number;
  readonly bottom: number;
  /** where left edges and lower edges may lie at all */
  readonly firstAlong: number;
  readonly lastAlong: number;
  readonly firstAcross: number;
  readonly lastAcross: number;
  /** heights at which a corner comes into reach or goes out of it, sorted */
  readonly breaks: readonly number[];
};

/** Line offsets from ≤ y ≤ to: none holds more than `most`, each holds `least`. A single offset has both equal. */
export type Strip = {
  readonly from: number;
  readonly to: number;
  readonly most: number;
  readonly least: number;
  /** forbidden spans at this one offset; null for a strip with an inside */
  readonly spans: Float64Array | null;
};

/** A single offset, a strip, a single offset, … a single offset, without holes from first to last. */
export type Strips = {
  readonly frame: Frame;
  readonly list: Strip[];
  readonly scratch: Float64Array;
  steps: number;
};

/** Thinner strips are not cut: about the tenth part of what the checker allows. */
export const THINNEST = 1e-4;

/** Offsets from first to last, with cuts about half a line apart. Empty when not one rectangle can lie there. */
export function startStrips(frame: Frame): Strips {
  const scratch = new Float64Array(2 * frame.obstacles.count);
  const strips: Strips = { frame, list: [], scratch, steps: 0 };
  const room = frame.lastAcross - frame.firstAcross;
  if (room < 0 || frame.lastAlong < frame.firstAlong) return strips;
  const parts = Math.min(MOST_PARTS, Math.ceil((2 * room) / frame.pitchAcross));
  let below = single(strips, frame.firstAcross);
  strips.list.push(below);
  for (let part = 1; part <= parts; part++) {
    const above = single(strips, frame.firstAcross + (room * part) / parts);
    strips.list.push(between(strips, below, above), above);
    below = above;
  }
  return strips;
}

const MOST_PARTS = 400;

/** Replaces the strip at the index by two with a single offset between; says whether it was thick enough. */
export function cutStrip(strips: Strips, index: number, wish: number): boolean {
  const [below, strip, above] = [strips.list[index - 1], strips.list[index], strips.list[index + 1]];
  if (below === undefined || strip === undefined || above === undefined) return false;
  if (strip.to - strip.from <= 1.01 * THINNEST) return false;
  const at = single(strips, placeOfCut(strips.frame, strip, wish));
  strips.list.splice(index, 1, between(strips, below, at), at, between(strips, at, above));
  return true;
}

/** The wish when it is well inside; else the break nearest the middle; else the middle. */
function placeOfCut(frame: Frame, { from, to }: Strip, wish: number): number {
  const margin = THINNEST / 100;
  if (wish - from > margin && to - wish > margin) return wish;
  const { breaks } = frame;
  const middle = (from + to) / 2;
  let best = middle;
  let distance = Infinity;
  for (let i = firstAtLeast(breaks, from + margin); i < breaks.length && breaks[i]! < to - margin; i++) {
    const away = Math.abs(breaks[i]! - middle);
    if (away < distance) [best, distance] = [breaks[i]!, away];
  }
  return best;
}

function firstAtLeast(sorted: readonly number[], value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

function single(strips: Strips, at: number): Strip {
  const spans = spansBetween(strips, at, at, new Float64Array(2 * strips.frame.obstacles.count));
  const count = capacity(strips.frame, at, at, "throughout", spans);
  return { from: at, to: at, most: count, least: count, spans };
}

/**
 * A strip between two single offsets. Each obstacle's forbidden set is convex, so what it forbids at both
 * ends it forbids everywhere between: what is left is the most. What it forbids anywhere in the strip is
 * what a rectangle taller by the strip would meet: what is left is the least.
 */
function between(strips: Strips, { from, spans: below }: Strip, { from: to, spans: above }: Strip): Strip {
  const { frame, scratch } = strips;
  intersect(below, above, scratch);
  const most = capacity(frame, from, to, "anywhere", scratch);
  if (most === 0) return { from, to, most, least: 0, spans: null };
  const least = capacity(frame, from, to, "throughout", spansBetween(strips, from, to, scratch));
  return { from, to, most, least, spans: null };
}

function intersect(one: Float64Array | null, other: Float64Array | null, into: Float64Array): void {
  if (one === null || other === null) throw new RangeError("a strip lies between single offsets");
  for (let i = 0; i < into.length; i += 2) {
    into[i] = one[i]! > other[i]! ? one[i]! : other[i]!;
    into[i + 1] = one[i + 1]! < other[i + 1]! ? one[i + 1]! : other[i + 1]!;
  }
}

function spansBetween(strips: Strips, low: number, high: number, into: Float64Array): Float64Array {
  const { obstacles, height, width } = strips.frame;
  strips.steps++;
  forbiddenSpans(obstacles, low, high + height, width, into);
  return into;
}

/** One for all calls, which never nest. */
const room = { first: 0, last: 0 };

function capacity(
  frame: Frame,
  low: number,
  high: number,
  where: "anywhere" | "throughout",
  spans: Float64Array,
): number {
  room.first = frame.firstAlong;
  room.last = frame.lastAlong;
  narrow(frame.walls, low, high, where, room);
  return mostInLine(room.first, room.last, frame.pitchAlong, spans);
}
