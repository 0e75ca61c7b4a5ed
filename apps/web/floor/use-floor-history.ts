import { canRedo, canUndo, type HallDocument, historyOf, redo, takeStep, undo } from "#core/hall";
import { useState } from "react";
import { type FloorPart, floorPartOf, samePart, withFloorPart } from "./floor-part.ts";

export type FloorHistory = {
  /** what is drawn now: the floor under a drag, else the document's */
  readonly shown: FloorPart;
  /** shows a floor that is not yet settled; null shows the settled one again */
  readonly preview: (part: FloorPart | null) => void;
  /** settles a floor; the same key in a row is one step to undo */
  readonly settle: (part: FloorPart, key?: string) => void;
  readonly undo: (() => void) | null;
  readonly redo: (() => void) | null;
};

/**
 * The floor of a document with what can be undone, kept as long as the editor is open. A document that changes from
 * outside (another device, an import) is a step of its own, so that undo brings back what she had drawn.
 */
export function useFloorHistory(
  document: HallDocument,
  onChange: (next: HallDocument) => void,
): FloorHistory {
  const [kept, setKept] = useState(() => ({ document, history: historyOf(floorPartOf(document)) }));
  const [shown, setShown] = useState<FloorPart | null>(null);
  let { history } = kept;
  if (kept.document !== document) {
    const part = floorPartOf(document);
    history = samePart(part, history.present) ? history : takeStep(history, part);
    setKept({ document, history });
  }
  const become = (next: typeof history) => {
    if (next === history) return;
    const changed = withFloorPart(document, next.present);
    setShown(null);
    setKept({ document, history: next });
    onChange(changed);
  };
  return {
    shown: shown ?? history.present,
    preview: setShown,
    settle: (part, key) => {
      setShown(null);
      if (!samePart(part, history.present)) become(takeStep(history, part, key));
    },
    undo: canUndo(history) ? () => become(undo(history)) : null,
    redo: canRedo(history) ? () => become(redo(history)) : null,
  };
}
