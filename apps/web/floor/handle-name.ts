import { cornerName, outlineOf, type ShapeRef, wallName } from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import type { FloorPart } from "./floor-part.ts";
import type { Handle } from "./handle.ts";
import { boxAround } from "./viewport.ts";

/** What a handle is called aloud: "Corner C, 4.20 m, 0.00 m", "Wall A–B, 8.00 m", "Piano, 1.20 m, 0.50 m, …". */
export function handleName(part: FloorPart, handle: Handle, units: LengthUnits): string {
  const outline = outlineOf(part, handle.shape);
  const of = handle.shape.kind === "floor" ? "" : `${shapeLabel(part, handle.shape)}: `;
  switch (handle.kind) {
    case "corner": {
      const [x, y] = outline[handle.corner] ?? [0, 0];
      return `${of}Corner ${cornerName(handle.corner)}, ${formatLength(x, units)}, ${formatLength(y, units)}`;
    }
    case "wall": {
      const side = handle.shape.kind === "floor" ? "Wall" : "Side";
      const length = formatLength(wallLength(part, handle.shape, handle.wall), units);
      return `${of}${side} ${wallName(outline, handle.wall)}, ${length}`;
    }
    case "shape": {
      const box = boxAround(outline);
      const [width, depth] = [box.right - box.left, box.top - box.bottom];
      const size = `${formatLength(width, units)} by ${formatLength(depth, units)}`;
      const at = `${formatLength(box.left, units)}, ${formatLength(box.bottom, units)}`;
      return `${shapeLabel(part, handle.shape)}, ${size}, at ${at}`;
    }
  }
}

export function shapeLabel(part: FloorPart, shape: ShapeRef): string {
  switch (shape.kind) {
    case "floor":
      return "Floor";
    case "teacher":
      return "Teacher’s place";
    case "fixture":
      return part.fixtures[shape.index]?.label || `Fixture ${shape.index + 1}`;
    case "keepClear":
      return part.keepClear[shape.index]?.label || `Keep-clear zone ${shape.index + 1}`;
  }
}

export function wallLength(part: FloorPart, shape: ShapeRef, wall: number): number {
  const outline = outlineOf(part, shape);
  const from = outline[wall] ?? [0, 0];
  const to = outline[(wall + 1) % outline.length] ?? from;
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
