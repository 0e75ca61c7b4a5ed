import { type Door, doorInWall, type ShapeRef } from "#core/hall";
import type { FloorPart } from "./floor-part.ts";

/** The door that a keep-clear zone was drawn for, with the zone's number; null for any other shape. */
export function doorOf(
  part: FloorPart,
  shape: ShapeRef,
): { readonly index: number; readonly door: Door } | null {
  if (shape.kind !== "keepClear") return null;
  const zone = part.keepClear[shape.index];
  const door = zone === undefined ? null : doorInWall(part.outline, zone);
  return door === null ? null : { index: shape.index, door };
}
