import { canRedo, canUndo, type HallDocument, redo, takeStep, undo } from "#core/hall";
import { useMemo, useState } from "react";
import { type FloorPart, samePart, withFloorPart } from "./floor-part.ts";
import { keptFloorOf, meetDocument } from "./kept-floor.ts";

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

export type FloorHistories = {
  /** with the floor under a drag, for the drawing */
  readonly live: FloorHistory;
  /** with the settled floor: the same value through a whole drag, so that what shows it is not drawn again */
  readonly settled: FloorHistory;
};

/**
 * The floor of a document with what can be undone, kept as long as the editor is open. A document that changes from
 * outside (another device, an import) is a step of its own, so that undo brings back what she had drawn.
 */
export function useFloorHistory(
  document: HallDocument,
  onChange: (next: HallDocument) => void,
): FloorHistories {
  const [kept, setKept] = useState(() => keptFloorOf(document));
  const [under, setUnder] = useState<FloorPart | null>(null);
  const met = meetDocument(kept, document);
  if (met !== kept) setKept(met);
  const { history } = met;
  const settled = useMemo<FloorHistory>(() => {
    const become = (next: typeof history) => {
      setUnder(null);
      setKept({ document, history: next });
      onChange(withFloorPart(document, next.present));
    };
    return {
      shown: history.present,
      preview: setUnder,
      settle: (part, key) => {
        if (samePart(part, history.present)) setUnder(null);
        else become(takeStep(history, part, key));
      },
      undo: canUndo(history) ? () => become(undo(history)) : null,
      redo: canRedo(history) ? () => become(redo(history)) : null,
    };
  }, [history, document, onChange]);
  const live = useMemo(() => (under === null ? settled : { ...settled, shown: under }), [settled, under]);
  return { live, settled };
}
