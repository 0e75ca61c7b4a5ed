import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly floor: FloorHistory; readonly onBegin: () => void };

/** Undo, redo and another shape; what can be added to the floor stands in the lists. */
export function FloorTools({ floor, onBegin }: Props) {
  return (
    <div className="row no-print">
      <StepButton word="Undo" act={floor.undo} keys="Control+Z Meta+Z" />
      <StepButton word="Redo" act={floor.redo} keys="Control+Shift+Z Meta+Shift+Z" />
      <button type="button" className="button" onClick={onBegin}>
        Another shape
      </button>
    </div>
  );
}

type StepProps = { readonly word: string; readonly act: (() => void) | null; readonly keys: string };

/** Stays where the cursor is when there is nothing left to do: a disabled button would lose it. */
function StepButton({ word, act, keys }: StepProps) {
  return (
    <button
      type="button"
      className="button"
      aria-disabled={act === null}
      data-disabled={act === null ? true : undefined}
      aria-keyshortcuts={keys}
      onClick={() => act?.()}
    >
      {word}
    </button>
  );
}
