import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly floor: FloorHistory; readonly onBegin: () => void };

/** Undo, redo and another shape; what can be added to the floor stands in the lists. */
export function FloorTools({ floor, onBegin }: Props) {
  return (
    <div className="row no-print">
      <button
        type="button"
        className="button"
        disabled={floor.undo === null}
        onClick={() => floor.undo?.()}
        aria-keyshortcuts="Control+Z Meta+Z"
      >
        Undo
      </button>
      <button
        type="button"
        className="button"
        disabled={floor.redo === null}
        onClick={() => floor.redo?.()}
        aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z"
      >
        Redo
      </button>
      <button type="button" className="button" onClick={onBegin}>
        Another shape
      </button>
    </div>
  );
}
