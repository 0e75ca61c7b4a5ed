import { doorInWall } from "./door-in-wall.ts";
import { type Door, doorSwing } from "./door-swing.ts";
import { cornerAt } from "./floor-corners.ts";
import type { FloorDraft } from "./floor-draft.ts";
import type { KeepClear } from "./hall.ts";

/**
 * After walls were moved: every door hangs in its wall again, as far from the wall's first corner as before, or as
 * far as the shorter wall allows. A wall too short for its door, or a floor with other walls than before, leaves
 * the door where it was.
 */
export function doorsFollow(before: FloorDraft, after: FloorDraft): FloorDraft {
  if (before.outline === after.outline || before.outline.length !== after.outline.length) return after;
  const keepClear = after.keepClear.map((zone) => followed(before, after, zone));
  return keepClear.every((zone, index) => zone === after.keepClear[index]) ? after : { ...after, keepClear };
}

function followed(before: FloorDraft, after: FloorDraft, zone: KeepClear): KeepClear {
  const door = doorInWall(before.outline, zone);
  if (door === null || sameWall(before, after, door.wall)) return zone;
  return hangDoor(after, door) ?? zone;
}

function sameWall(before: FloorDraft, after: FloorDraft, wall: number): boolean {
  return [wall, (wall + 1) % before.outline.length].every((corner) => {
    const [x, y] = cornerAt(before.outline, corner);
    const [otherX, otherY] = cornerAt(after.outline, corner);
    return x === otherX && y === otherY;
  });
}

/** The zone of a door, its hinge shifted along so that the leaf ends within the wall; null where it is too wide. */
export function hangDoor(draft: Pick<FloorDraft, "outline">, door: Door): KeepClear | null {
  const from = cornerAt(draft.outline, door.wall);
  const to = cornerAt(draft.outline, (door.wall + 1) % draft.outline.length);
  const length = Math.floor(Math.hypot(to[0] - from[0], to[1] - from[1]));
  if (door.width > length || door.width <= 0) return null;
  const [least, most] = door.reaches === "on" ? [0, length - door.width] : [door.width, length];
  return doorSwing(draft.outline, { ...door, hingeAt: Math.min(Math.max(door.hingeAt, least), most) });
}
