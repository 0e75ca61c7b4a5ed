// Example: the handle of corner C of the floor is { kind: "corner", shape: { kind: "floor" }, corner: 2 }; dragged
// from (4203, 7) to (4310, −60) it lands on the centimetre: its corner at 4200, 0 goes to 4310, −70.
// Invariant: a handle only says which operation of the floor a pointer or a key stands for; the rules are the core's.
import {
  doorInWall,
  doorsFollow,
  type FloorDraft,
  hangDoor,
  moveCorner,
  moveShape,
  moveWall,
  outlineOf,
  outwardOf,
  type ShapeRef,
  snapInLine,
  snapLength,
  wallsOf,
} from "#core/hall";
import type { Point } from "#kernels/geometry";
import type { FloorPart } from "./floor-part.ts";

export type Handle =
  | { readonly kind: "corner"; readonly shape: ShapeRef; readonly corner: number }
  | { readonly kind: "wall"; readonly shape: ShapeRef; readonly wall: number }
  | { readonly kind: "shape"; readonly shape: ShapeRef };

/** The same text for the same handle: a key for React, for undo and for finding it on the page. */
export function handleKey(handle: Handle): string {
  const { shape } = handle;
  const of = "index" in shape ? `${shape.kind}-${shape.index}` : shape.kind;
  switch (handle.kind) {
    case "corner":
      return `${of}-corner-${handle.corner}`;
    case "wall":
      return `${of}-wall-${handle.wall}`;
    case "shape":
      return of;
  }
}

/**
 * The floor after the handle was drawn by so much, from the floor as it was when the drag began. Within `reach`
 * millimetres of its neighbours' lines a corner takes them, so that a hand does not put walls askew.
 */
export function dragged(part: FloorPart, handle: Handle, by: Point, reach = 0): FloorPart {
  switch (handle.kind) {
    case "corner": {
      const outline = outlineOf(part, handle.shape);
      const at = outline[handle.corner];
      if (at === undefined) return part;
      const to = snapInLine(outline, handle.corner, [at[0] + by[0], at[1] + by[1]], reach);
      return changed(part, moveCorner(part, handle.shape, handle.corner, to));
    }
    case "wall": {
      const out = outwardOf(outlineOf(part, handle.shape), handle.wall);
      return changed(part, moveWall(part, handle.shape, handle.wall, out[0] * by[0] + out[1] * by[1]));
    }
    case "shape":
      return slidDoor(part, handle.shape, by) ?? changed(part, moveShape(part, handle.shape, by));
  }
}

/** An arrow key: a wall that stands askew takes the whole step, a wall along the arrow stays where it is. */
export function nudged(part: FloorPart, handle: Handle, by: Point): FloorPart {
  if (handle.kind !== "wall") return dragged(part, handle, by);
  const out = outwardOf(outlineOf(part, handle.shape), handle.wall);
  const way = out[0] * by[0] + out[1] * by[1];
  const size = Math.hypot(by[0], by[1]);
  if (Math.abs(way) < size / 4) return part;
  return changed(part, moveWall(part, handle.shape, handle.wall, Math.sign(way) * size));
}

/** The part with a changed floor, doors hanging in their walls; mat, gaps and axis go on as they were. */
export function changed(part: FloorPart, draft: FloorDraft): FloorPart {
  return { ...part, ...doorsFollow(part, draft) };
}

/** A door slides along its wall; null for anything that is not a door in a wall. */
function slidDoor(part: FloorPart, shape: ShapeRef, by: Point): FloorPart | null {
  if (shape.kind !== "keepClear") return null;
  const zone = part.keepClear[shape.index];
  const door = zone === undefined ? null : doorInWall(part.outline, zone);
  if (door === null) return null;
  const { from, to, length } = wallsOf(part.outline)[door.wall] ?? { from: [0, 0], to: [0, 0], length: 0 };
  const along = length === 0 ? 0 : ((to[0] - from[0]) * by[0] + (to[1] - from[1]) * by[1]) / length;
  const hung = hangDoor(part, { ...door, hingeAt: snapLength(door.hingeAt + along) });
  return hung === null ? part : { ...part, keepClear: part.keepClear.with(shape.index, hung) };
}
