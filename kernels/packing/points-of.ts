import { type MostSpace, roomsBetween, type Turn } from "./most-space.ts";
import { SAME, SLACK } from "./reach-of.ts";

/** Coordinates at which points are set, sorted. */
export type Points = { readonly xs: readonly number[]; readonly ys: readonly number[] };

/**
 * Right (and upper) ends of chains of touching rectangles that begin at the left of the floor or just past an
 * obstacle: with points there, a rectangle that floats between two ends covers all that one pushed left would. No
 * more than `most` a way: then the closest ones are thinned out, which can only make the bound worse.
 */
export function pointsOf(space: MostSpace, most: number, slack = SLACK): Points {
  const across = space.turns.map((turn) => turn.width + turn.gapX - 2 * slack);
  const up = space.turns.map((turn) => turn.height + turn.gapY - 2 * slack);
  const lefts = space.turns.map((turn) => leftsOf(turn, slack));
  const lows = space.turns.map((turn) => lowsOf(turn, slack));
  const xs = thinned(chainsOf(joined(lefts), across), most);
  const ys = thinned(chainsOf(joined(lows), up), most);
  return space.turns.some(isSlanted) ? { xs: filled(xs, most), ys: filled(ys, most) } : { xs, ys };
}

type Starts = { readonly starts: readonly number[]; readonly end: number };

function joined(parts: readonly Starts[]): Starts {
  return {
    starts: parts.flatMap((part) => part.starts),
    end: Math.max(-Infinity, ...parts.map((part) => part.end)),
  };
}

function lowsOf({ frame, gapY, height, stops }: Turn, slack: number): Starts {
  if (frame.lastAcross < frame.firstAcross) return { starts: [], end: -Infinity };
  const above = stops.filter((stop) => stop > frame.firstAcross);
  return {
    starts: [frame.firstAcross, ...above].map((low) => low - gapY / 2 + slack),
    end: frame.lastAcross + height + gapY / 2,
  };
}

/** Heights at which the rooms are looked up, and how many must agree to be a wall that stands upright. */
const LOOKS = 60;
const UPRIGHT = 3;

function leftsOf({ frame, gapX, width }: Turn, slack: number): Starts {
  const seen = new Map<number, number>();
  let [least, end] = [Infinity, -Infinity];
  const room = frame.lastAcross - frame.firstAcross;
  if (room < 0) return { starts: [], end };
  for (let look = 0; look <= LOOKS; look++) {
    const y = frame.firstAcross + (room * look) / LOOKS;
    const rooms = roomsBetween(frame, y, y);
    for (let i = 0; i < rooms.length; i += 2) {
      const key = Math.round(rooms[i]! * 1e3);
      seen.set(key, (seen.get(key) ?? 0) + 1);
      least = Math.min(least, rooms[i]!);
      end = Math.max(end, rooms[i + 1]! + width + gapX / 2);
    }
  }
  if (least === Infinity) return { starts: [], end };
  const walls = [...seen].filter(([, times]) => times >= UPRIGHT).map(([key]) => key / 1e3);
  return { starts: [least, ...walls].map((left) => left - gapX / 2 + slack), end };
}

function chainsOf({ starts, end }: Starts, steps: readonly number[]): readonly number[] {
  const reached = new Map<number, number>();
  const open = [...starts];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    const key = Math.round(at * 100);
    // chains of unlike pieces end slacks apart: the lowest end is the one that all of them cover
    if (at > end + SAME || at >= (reached.get(key) ?? Infinity) - 1e-9) continue;
    reached.set(key, at);
    for (const step of steps) open.push(at + step);
  }
  return [...reached.values()].sort((a, b) => a - b);
}

function thinned(sorted: readonly number[], most: number): readonly number[] {
  let kept = spaced(sorted, 0.02);
  for (let apart = 2; kept.length > most; apart += 2) kept = spaced(sorted, apart);
  return kept;
}

function spaced(sorted: readonly number[], apart: number): readonly number[] {
  const kept: number[] = [];
  for (const at of sorted) if (kept.length === 0 || at - kept.at(-1)! >= apart) kept.push(at);
  return kept;
}

/** Whether the ends of lines change from height to height: some wall or edge is not upright. */
export function isSlanted({ frame }: Turn): boolean {
  const room = frame.lastAcross - frame.firstAcross;
  if (room <= 0) return false;
  const ends = new Set<number>();
  if (room <= 0) return false;
  for (let look = 0; look < LOOKS; look++) {
    const y = frame.firstAcross + (room * (look + 0.5)) / LOOKS;
    for (const x of roomsBetween(frame, y, y)) ends.add(Math.round(x));
  }
  return ends.size > LOOKS / 2;
}

/** Gaps narrower than this (millimetres) are not halved any more. */
const NARROW = 20;

/** More points in the middle of the widest gaps: where walls slant, chains may begin anywhere. */
function filled(sorted: readonly number[], most: number): readonly number[] {
  const points = [...sorted];
  while (points.length > 1 && points.length < 0.75 * most) {
    const gaps = points.slice(1).map((at, index) => at - points[index]!);
    const widest = Math.max(...gaps);
    if (widest < NARROW) break;
    const index = gaps.indexOf(widest);
    points.splice(index + 1, 0, points[index]! + widest / 2);
  }
  return points;
}
