import type { Laid } from "./laid.ts";
import { type MostSpace, type Rooms, roomsBetween } from "./most-space.ts";

/** Rooms at exact heights, remembered: the search asks for the same few hundred heights over and over. */
export type Ground = {
  readonly space: MostSpace;
  readonly known: readonly [Map<number, Rooms>, Map<number, Rooms>];
};

export function groundOf(space: MostSpace): Ground {
  return { space, known: [new Map(), new Map()] };
}

const REMEMBERED = 4000;

export function roomsAt({ space, known }: Ground, turn: 0 | 1, y: number): Rooms {
  const key = Math.round(y * 1e4);
  const rooms = known[turn].get(key);
  if (rooms !== undefined) return rooms;
  const { frame } = space.turns[turn];
  const inside = y >= frame.firstAcross - 1e-6 && y <= frame.lastAcross + 1e-6;
  const found = inside ? roomsBetween(frame, y, y) : [];
  if (known[turn].size > REMEMBERED) known[turn].clear();
  known[turn].set(key, found);
  return found;
}

/** Overlapping by less is touching: a tenth of what a bound allows for, a hundredth of what the checker does. */
export const TOUCH = 1e-5;

/** Whether two would be too near each other. */
export function clash({ turns }: MostSpace, a: Laid, b: Laid): boolean {
  const [one, other] = [turns[a.turn], turns[b.turn]];
  const across = Math.abs(2 * (a.x - b.x) + one.width - other.width);
  if (across >= one.width + one.gapX + other.width + other.gapX - 2 * TOUCH) return false;
  const up = Math.abs(2 * (a.y - b.y) + one.height - other.height);
  return up < one.height + one.gapY + other.height + other.gapY - 2 * TOUCH;
}

/** Left edges at this height that neither the floor nor the laid ones forbid, written to `into`. */
export function openAt(ground: Ground, laid: readonly Laid[], turn: 0 | 1, y: number, into: number[]): void {
  into.length = 0;
  const rooms = roomsAt(ground, turn, y);
  for (let i = 0; i < rooms.length; i++) into.push(rooms[i]!);
  if (into.length === 0) return;
  const { turns } = ground.space;
  const own = turns[turn];
  const [low, high] = [y - own.gapY / 2 + TOUCH, y + own.height + own.gapY / 2 - TOUCH];
  for (const other of laid) {
    const its = turns[other.turn];
    if (other.y - its.gapY / 2 >= high || other.y + its.height + its.gapY / 2 <= low) continue;
    const from = other.x - its.gapX / 2 - own.width - own.gapX / 2;
    const to = other.x + its.width + its.gapX / 2 + own.gapX / 2;
    cutOut(into, from, to);
    if (into.length === 0) return;
  }
}

/** Takes the open span out of the intervals. */
function cutOut(rooms: number[], from: number, to: number): void {
  let kept = 0;
  const size = rooms.length;
  let extra: [number, number] | null = null;
  for (let i = 0; i < size; i += 2) {
    const [left, right] = [rooms[i]!, rooms[i + 1]!];
    if (right <= from + TOUCH || left >= to - TOUCH) {
      rooms[kept++] = left;
      rooms[kept++] = right;
      continue;
    }
    const [before, after] = [left <= from, right >= to];
    if (before) {
      rooms[kept++] = left;
      rooms[kept++] = from;
    }
    if (before && after) extra = [to, right];
    else if (after) {
      rooms[kept++] = to;
      rooms[kept++] = right;
    }
  }
  rooms.length = kept;
  if (extra !== null) rooms.push(extra[0], extra[1]);
}
