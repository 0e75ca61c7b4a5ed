// Example: Tithe Barn Hall is measured again, 0.10 m wider: its stage stays, its door hangs in its wall again, and the
// floor as it was is kept beside the figures until it is put back or another outline takes its place.
// Invariant: what "put back" brings back is what stood in the document before the outline was used.
import { type HallDocument, type ReplacedOutline, replacedOutline } from "#core/hall";
import type { Polygon } from "#kernels/geometry";
import { floorPartOf, withFloorPart } from "../floor/floor-part.ts";
import type { FloorBefore } from "./measuring.ts";

/** A hall's document with another outline, and what became of what stood on its floor. */
export type HallFloor = ReplacedOutline & { readonly document: HallDocument; readonly isSame: boolean };

export function hallFloor(document: HallDocument, outline: Polygon): HallFloor {
  const part = floorPartOf(document);
  const replaced = replacedOutline(part, outline);
  const isSame = JSON.stringify(replaced.draft.outline) === JSON.stringify(part.outline);
  return { ...replaced, document: withFloorPart(document, { ...part, ...replaced.draft }), isSame };
}

export function floorBefore({ outline, fixtures, keepClear, teacher }: HallDocument): FloorBefore {
  return { outline, fixtures, keepClear, teacher };
}

/** What will become of what stands on the floor, in sentences; none for a hall without a floor. */
export function replacedWords(
  document: HallDocument,
  { gone, followed, loose }: ReplacedOutline,
): readonly string[] {
  if (document.outline.length === 0) return [];
  const left = document.fixtures.length + document.keepClear.length - followed.length - loose.length;
  return [
    "Its floor is replaced; what stands on it stays where it was drawn.",
    ...(followed.length > 0
      ? [`${listed(followed)}: hung in the new wall, as far from its corner as before.`]
      : []),
    ...(loose.length > 0
      ? [`${listed(loose)}: left where it was drawn, because the walls are others now.`]
      : []),
    ...(gone.length > 0 ? [`${listed(gone)}: taken away, because it would lie outside the new walls.`] : []),
    ...(left > 0 || followed.length > 0
      ? ["Look at the drawing afterwards: was it walked from the same corner?"]
      : []),
  ];
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
