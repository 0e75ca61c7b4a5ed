import { boundsOf, type Point, type Polygon } from "#kernels/geometry";
import { type FloorDraft, outlineOf, replaced, type ShapeRef, withOutline } from "./floor-draft.ts";
import { snapLength, snapPoint } from "./floor-snap.ts";
import type { Fixture, KeepClear } from "./hall.ts";
import { added } from "./vectors.ts";

/** The four corners of an upright rectangle from its bottom left corner. */
export function rectangleAt([x, y]: Point, width: number, depth: number): Polygon {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

export function addFixture(draft: FloorDraft, fixture: Fixture): FloorDraft {
  return { ...draft, fixtures: [...draft.fixtures, fixture] };
}

export function addKeepClear(draft: FloorDraft, zone: KeepClear): FloorDraft {
  return { ...draft, keepClear: [...draft.keepClear, zone] };
}

/** Where she teaches from, instead of any zone before. */
export function placeTeacher(draft: FloorDraft, outline: Polygon): FloorDraft {
  return { ...draft, teacher: { outline } };
}

/** Shifts the whole shape, door leaf and all, so that its bottom left lands on a whole centimetre. */
export function moveShape(draft: FloorDraft, shape: ShapeRef, by: Point): FloorDraft {
  const outline = outlineOf(draft, shape);
  const { left, bottom } = boundsOf(outline);
  const shift: Point = [snapLength(left + by[0]) - left, snapLength(bottom + by[1]) - bottom];
  const moved = outline.map((corner) => added(corner, shift));
  if (shape.kind !== "keepClear") return withOutline(draft, shape, moved);
  const keepClear = replaced(draft.keepClear, shape, (zone) => movedZone(zone, moved, shift));
  return { ...draft, keepClear };
}

function movedZone(zone: KeepClear, outline: Polygon, shift: Point): KeepClear {
  if (zone.door === undefined) return { ...zone, outline };
  const { hinge, closed, open } = zone.door;
  const moved = { hinge: added(hinge, shift), closed: added(closed, shift), open: added(open, shift) };
  const door = { ...zone.door, ...moved };
  return { ...zone, outline, door };
}

/** Stretches the shape from its bottom left corner to that width and depth, corners to the centimetre. */
export function resizeShape(draft: FloorDraft, shape: ShapeRef, width: number, depth: number): FloorDraft {
  const outline = outlineOf(draft, shape);
  const { left, bottom, right, top } = boundsOf(outline);
  const [across, up] = [stretch(right - left, width), stretch(top - bottom, depth)];
  const resized = outline.map(([x, y]) =>
    snapPoint([left + (x - left) * across, bottom + (y - bottom) * up]),
  );
  return withOutline(draft, shape, resized);
}

/** A shape without any width cannot be stretched and stays. */
function stretch(now: number, wanted: number): number {
  return now === 0 ? 1 : wanted / now;
}

export function renameShape(
  draft: FloorDraft,
  shape: Extract<ShapeRef, { index: number }>,
  label: string,
): FloorDraft {
  if (shape.kind === "fixture") {
    return { ...draft, fixtures: replaced(draft.fixtures, shape, (it) => ({ ...it, label })) };
  }
  return { ...draft, keepClear: replaced(draft.keepClear, shape, (it) => ({ ...it, label })) };
}

export function setMovable(draft: FloorDraft, fixture: number, movable: boolean): FloorDraft {
  const shape = { kind: "fixture", index: fixture } as const;
  return { ...draft, fixtures: replaced(draft.fixtures, shape, (it) => ({ ...it, movable })) };
}

/** Without that shape; the floor itself stays. Throws where there is no such shape. */
export function removeShape(draft: FloorDraft, shape: ShapeRef): FloorDraft {
  outlineOf(draft, shape);
  switch (shape.kind) {
    case "floor":
      return draft;
    case "teacher":
      return { ...draft, teacher: null };
    case "fixture":
      return { ...draft, fixtures: draft.fixtures.toSpliced(shape.index, 1) };
    case "keepClear":
      return { ...draft, keepClear: draft.keepClear.toSpliced(shape.index, 1) };
  }
}
