import type { Polygon } from "#kernels/geometry";
import type { Hall } from "./hall.ts";

/**
 * A floor while it is being drawn. Its walls may cross and its fixtures lie outside: `readHall` tells, nothing here
 * refuses. Every hall is a draft too. Whole millimetres.
 */
export type FloorDraft = Pick<Hall, "outline" | "fixtures" | "keepClear" | "teacher">;

/** Which of the draft's shapes is meant. */
export type ShapeRef =
  | { readonly kind: "floor" }
  | { readonly kind: "fixture"; readonly index: number }
  | { readonly kind: "keepClear"; readonly index: number }
  | { readonly kind: "teacher" };

export function floorDraft(outline: Polygon): FloorDraft {
  return { outline, fixtures: [], keepClear: [], teacher: null };
}

/** Throws where the draft has no such shape. */
export function outlineOf(draft: FloorDraft, shape: ShapeRef): Polygon {
  switch (shape.kind) {
    case "floor":
      return draft.outline;
    case "teacher":
      return there(draft.teacher, shape).outline;
    case "fixture":
      return there(draft.fixtures[shape.index], shape).outline;
    case "keepClear":
      return there(draft.keepClear[shape.index], shape).outline;
  }
}

/** The draft with another outline for one shape. A door that is bent out of shape is a plain zone from then on. */
export function withOutline(draft: FloorDraft, shape: ShapeRef, outline: Polygon): FloorDraft {
  switch (shape.kind) {
    case "floor":
      return { ...draft, outline };
    case "teacher":
      return { ...draft, teacher: { outline } };
    case "fixture":
      return { ...draft, fixtures: replaced(draft.fixtures, shape, (it) => ({ ...it, outline })) };
    case "keepClear":
      return {
        ...draft,
        keepClear: replaced(draft.keepClear, shape, ({ label }) => ({ label, outline })),
      };
  }
}

/** The list with one of its shapes changed; throws where there is no such shape. */
export function replaced<Shape>(
  list: readonly Shape[],
  shape: Extract<ShapeRef, { index: number }>,
  change: (it: Shape) => Shape,
): readonly Shape[] {
  return list.with(shape.index, change(there(list[shape.index], shape)));
}

function there<Shape>(found: Shape | null | undefined, shape: ShapeRef): Shape {
  if (found === null || found === undefined) throw new RangeError(`no such shape: ${JSON.stringify(shape)}`);
  return found;
}
