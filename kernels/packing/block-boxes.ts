import { type Extent, fillBlocks } from "./fill-blocks.ts";
import { forbiddenSpans } from "./forbidden-spans.ts";
import { narrow } from "./hull-walls.ts";
import type { Laid } from "./laid.ts";
import { type MostSpace, openParts, type Turn } from "./most-space.ts";

/** A box in which a rectangle may lie anywhere. */
export type Box = {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};

/**
 * The largest boxes that keep their distance from everything, largest first: from each height at which something is
 * cleared to each at which something begins, and a few between for slanted walls.
 */
export function boxesOf(space: MostSpace, most: number): readonly Box[] {
  const flat = space.turns[0].height <= space.turns[1].height ? space.turns[0] : space.turns[1];
  const { frame, height, stops } = flat;
  if (frame.lastAcross < frame.firstAcross) return [];
  const lows = levelsOf(flat, stops);
  const tops = levelsOf(flat, stops).map((low) => low + height);
  const boxes: Box[] = [];
  for (const bottom of lows)
    for (const top of tops) if (top - bottom >= height - 1e-6) boxes.push(...boxesBetween(flat, bottom, top));
  const sorted = boxes.sort((a, b) => sizeOf(b) - sizeOf(a) || a.bottom - b.bottom || a.left - b.left);
  const kept: Box[] = [];
  for (const box of sorted) {
    if (kept.length === most) break;
    if (!kept.some((other) => shared(box, other) > 0.8 * sizeOf(box))) kept.push(box);
  }
  return kept;
}

const LEVELS = 12;

function levelsOf({ frame }: Turn, stops: readonly number[]): readonly number[] {
  const room = frame.lastAcross - frame.firstAcross;
  const even = Array.from({ length: LEVELS + 1 }, (_, i) => frame.firstAcross + (room * i) / LEVELS);
  return [...new Set([...even, ...stops.filter((_, i) => i % Math.ceil(stops.length / 30) === 0)])];
}

function boxesBetween({ frame, width }: Turn, bottom: number, top: number): readonly Box[] {
  const spans = new Float64Array(2 * frame.obstacles.count);
  forbiddenSpans(frame.obstacles, bottom, top, 0, spans);
  const room = { first: frame.firstAlong, last: frame.lastAlong };
  narrow(frame.walls, bottom, top - frame.height, "throughout", room);
  const open = openParts(spans, room.first, room.last + width);
  const boxes: Box[] = [];
  for (let i = 0; i < open.length; i += 2)
    if (open[i + 1]! - open[i]! >= Math.min(width, frame.height))
      boxes.push({ left: open[i]!, right: open[i + 1]!, bottom, top });
  return boxes;
}

function sizeOf({ left, right, bottom, top }: Box): number {
  return (right - left) * (top - bottom);
}

function shared(one: Box, other: Box): number {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const high = Math.min(one.top, other.top) - Math.max(one.bottom, other.bottom);
  return Math.max(0, wide) * Math.max(0, high);
}

/** Cuts a way: with n the work grows as n to the fifth, some 0.2 s at 40 by 40. */
const CUTS = 40;

/** The box filled with blocks, each turn reaching half its gap past the box. */
export function blocksIn(space: MostSpace, box: Box): readonly Laid[] {
  const [one, other] = [around(box, space.turns[0]), around(box, space.turns[1])];
  return fillBlocks(space, [one, other], {
    xs: cutsAlong(space, [one.left, other.left], Math.max(one.right, other.right), "x", CUTS),
    ys: cutsAlong(space, [one.bottom, other.bottom], Math.max(one.top, other.top), "y", CUTS),
  });
}

function around(box: Box, { gapX, gapY }: Turn): Extent {
  return {
    left: box.left - gapX / 2,
    right: box.right + gapX / 2,
    bottom: box.bottom - gapY / 2,
    top: box.top + gapY / 2,
  };
}

/** Ends of chains from either start; where those are too many, of chains all of one turn. */
export function cutsAlong(
  { turns }: MostSpace,
  starts: readonly [number, number],
  end: number,
  way: "x" | "y",
  most: number,
): readonly number[] {
  const sizes = turns.map((turn) => (way === "x" ? turn.width + turn.gapX : turn.height + turn.gapY));
  const [a, b] = [sizes[0]!, sizes[1]!];
  const mixed = new Set<number>();
  for (const start of starts)
    for (let x = start; x < end; x += a)
      for (let y = x; y < end; y += b) if (y > start + 1) mixed.add(Math.round(y * 1e4) / 1e4);
  const plain = new Set<number>();
  for (const [index, size] of sizes.entries())
    for (let x = starts[index]! + size; x < end; x += size) plain.add(Math.round(x * 1e4) / 1e4);
  const sorted = [...(mixed.size <= most ? mixed : plain)].sort((p, q) => p - q);
  return sorted.length <= most ? sorted : sorted.filter((_, i) => i % Math.ceil(sorted.length / most) === 0);
}
