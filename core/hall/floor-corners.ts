import type { Point } from "#kernels/geometry";
import { type FloorDraft, outlineOf, type ShapeRef, withOutline } from "./floor-draft.ts";
import { snapPoint } from "./floor-snap.ts";

/** The corner goes to the nearest whole centimetre of where it was put. */
export function moveCorner(draft: FloorDraft, shape: ShapeRef, corner: number, to: Point): FloorDraft {
  const outline = outlineOf(draft, shape);
  return withOutline(draft, shape, outline.with(corner, snapPoint(to)));
}

/** A new corner on the wall that leaves corner `wall`, in its middle unless told where; to the centimetre. */
export function addCorner(draft: FloorDraft, shape: ShapeRef, wall: number, at?: Point): FloorDraft {
  const outline = outlineOf(draft, shape);
  const from = cornerAt(outline, wall);
  const to = cornerAt(outline, (wall + 1) % outline.length);
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return withOutline(draft, shape, outline.toSpliced(wall + 1, 0, snapPoint(at ?? middle)));
}

/** Without that corner, or the same draft where only three are left. */
export function removeCorner(draft: FloorDraft, shape: ShapeRef, corner: number): FloorDraft {
  const outline = outlineOf(draft, shape);
  cornerAt(outline, corner);
  return outline.length <= 3 ? draft : withOutline(draft, shape, outline.toSpliced(corner, 1));
}

/** The corner of that number; throws where there is none. */
export function cornerAt(outline: readonly Point[], corner: number): Point {
  const found = outline[corner];
  if (found === undefined) throw new RangeError(`no corner ${corner} of ${outline.length}`);
  return found;
}
