// Example: a hall of 8 × 12 m with a stage and a door is measured again as 8.10 × 12.05 m from another corner: the
// new outline is turned and lettered like the old one, the door hangs in its wall again, the stage stays.
// Invariant: what still touches the floor stays; what does not is named, and nothing else is taken away.
import { boundsOf, type Point, type Polygon, rotatePolygon, signedArea } from "#kernels/geometry";
import { doorInWall } from "../door-in-wall.ts";
import { doorsFollow } from "../doors-follow.ts";
import type { FloorDraft } from "../floor-draft.ts";
import { snapLength } from "../floor-snap.ts";
import { interiorsMeet } from "../interiors-meet.ts";
import { added } from "../vectors.ts";

/** A floor with another outline, and what became of what stood on it. */
export type ReplacedOutline = {
  readonly draft: FloorDraft;
  /** names of what would lie wholly outside and is taken away */
  readonly gone: readonly string[];
  /** names of doors that hang in their walls again */
  readonly followed: readonly string[];
  /** names of doors that stay where they were drawn, in no wall */
  readonly loose: readonly string[];
};

/**
 * The floor with another outline in the place of its own. An outline with as many corners is turned, and lettered
 * from the corner, that bring it nearest to the old one, and its doors follow their walls; any other is only put to
 * the bottom left of the old one. Millimetres.
 */
export function replacedOutline(before: FloorDraft, outline: Polygon): ReplacedOutline {
  const placed = placedLike(before.outline, outline);
  const moved = doorsFollow(before, { ...before, outline: placed });
  const stays = (it: { readonly outline: Polygon }): boolean => interiorsMeet(it.outline, placed);
  const draft: FloorDraft = {
    outline: placed,
    fixtures: moved.fixtures.filter(stays),
    keepClear: moved.keepClear.filter(stays),
    teacher: moved.teacher !== null && stays(moved.teacher) ? moved.teacher : null,
  };
  const doors = draft.keepClear.filter((it) => it.door !== undefined);
  const hangs = doors.map((it) => doorInWall(placed, it) !== null);
  return {
    draft,
    gone: [
      ...[...moved.fixtures, ...moved.keepClear].filter((it) => !stays(it)).map((it) => it.label),
      ...(moved.teacher !== null && draft.teacher === null ? ["the teacher’s zone"] : []),
    ],
    followed: doors.filter((_, index) => hangs[index] === true).map((it) => it.label),
    loose: doors.filter((_, index) => hangs[index] !== true).map((it) => it.label),
  };
}

function placedLike(before: Polygon, outline: Polygon): Polygon {
  if (before.length < 3) return outline;
  const likest = before.length === outline.length ? turnedLike(before, outline) : outline;
  const [old, now] = [boundsOf(before), boundsOf(likest)];
  const shift: Point = [snapLength(old.left - now.left, 1), snapLength(old.bottom - now.bottom, 1)];
  return likest.map((corner) => added(corner, shift));
}

/** Quarter turns and first corners only: a hall that was level on its drawing stays level. */
function turnedLike(before: Polygon, outline: Polygon): Polygon {
  const sameWay = signedArea(before) > 0 === signedArea(outline) > 0 ? outline : outline.toReversed();
  let best = { outline: sameWay, off: Infinity };
  for (const turn of [0, 90, 180, 270]) {
    const turned = rotatePolygon(sameWay, turn);
    for (const first of turned.keys()) {
      const lettered = [...turned.slice(first), ...turned.slice(0, first)];
      const off = offBy(before, lettered);
      // a millimetre in a metre's square: of two that fit as well the first, turned least, stays
      if (off < best.off - 1000) best = { outline: lettered, off };
    }
  }
  return best.outline;
}

/** The sum of the squares by which corners are apart, both outlines put on their bottom left. */
function offBy(before: Polygon, outline: Polygon): number {
  const [old, now] = [boundsOf(before), boundsOf(outline)];
  return before.reduce((sum, [x, y], index) => {
    const [otherX, otherY] = outline[index] ?? [0, 0];
    return sum + (x - old.left - otherX + now.left) ** 2 + (y - old.bottom - otherY + now.bottom) ** 2;
  }, 0);
}
