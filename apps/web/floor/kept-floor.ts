// Example: she moves a corner, another device renames the hall: one step to undo. Another device moves a wall: a step
// of its own, and undo brings back the floor that she had drawn.
import { type HallDocument, type History, historyOf, takeStep } from "#core/hall";
import { type FloorPart, floorPartOf, samePart } from "./floor-part.ts";

/** The floor's history with the document that it was last seen in. */
export type KeptFloor = { readonly document: HallDocument; readonly history: History<FloorPart> };

export function keptFloorOf(document: HallDocument): KeptFloor {
  return { document, history: historyOf(floorPartOf(document)) };
}

/** After a document came from outside: a step where its floor is another one, no step where only the rest differs. */
export function meetDocument(kept: KeptFloor, document: HallDocument): KeptFloor {
  if (kept.document === document) return kept;
  const part = floorPartOf(document);
  const { history } = kept;
  return { document, history: samePart(part, history.present) ? history : takeStep(history, part) };
}
