import { type RefObject, useEffect } from "react";
import type { FloorHistory } from "./use-floor-history.ts";

/** Control or ⌘ with Z undoes, with Shift too it redoes, anywhere in the editor but in a field, which has its own. */
export function useUndoKeys(editor: RefObject<HTMLElement | null>, floor: FloorHistory): void {
  useEffect(() => {
    const node = editor.current;
    const onKeyDown = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      if (event.target instanceof HTMLInputElement) return;
      event.preventDefault();
      const act = event.shiftKey ? floor.redo : floor.undo;
      act?.();
    };
    node?.addEventListener("keydown", onKeyDown);
    return () => node?.removeEventListener("keydown", onKeyDown);
  }, [editor, floor]);
}
