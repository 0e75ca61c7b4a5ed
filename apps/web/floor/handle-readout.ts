import { outlineOf, wallsOf } from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import type { FloorPart } from "./floor-part.ts";
import type { Handle } from "./handle.ts";
import { handleName } from "./handle-name.ts";

/** What a drag or an arrow key is changing, in lengths: "Corner C, 8.20 m, 0.00 m. B–C 8.20 m, C–D 12.00 m." */
export function handleReadout(part: FloorPart, handle: Handle, units: LengthUnits): string {
  if (!isThere(part, handle)) return "";
  const name = handleName(part, handle, units);
  const walls = changedWalls(part, handle).map((it) => `${it.name} ${formatLength(it.length, units)}`);
  return walls.length === 0 ? `${name}.` : `${name}. ${walls.join(", ")}.`;
}

/** The walls on both sides of a corner, or those at both ends of a wall. */
function changedWalls(part: FloorPart, handle: Handle) {
  if (handle.kind === "shape") return [];
  const walls = wallsOf(outlineOf(part, handle.shape));
  const count = walls.length;
  const at = handle.kind === "corner" ? handle.corner : handle.wall;
  const after = handle.kind === "corner" ? at : at + 1;
  return [walls[(at + count - 1) % count], walls[after % count]].filter((it) => it !== undefined);
}

/** A handle that was removed meanwhile has nothing to read out. */
export function isThere(part: FloorPart, handle: Handle): boolean {
  const { shape } = handle;
  if (shape.kind === "fixture" && part.fixtures[shape.index] === undefined) return false;
  if (shape.kind === "keepClear" && part.keepClear[shape.index] === undefined) return false;
  if (shape.kind === "teacher" && part.teacher === null) return false;
  if (handle.kind === "shape") return true;
  const corners = outlineOf(part, shape).length;
  return (handle.kind === "corner" ? handle.corner : handle.wall) < corners;
}
