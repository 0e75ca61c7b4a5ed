import { useSyncExternalStore } from "react";

const wide = "(min-width: 48rem)";

/** Whether the page is wide enough for a table of many columns. */
export function useWide(): boolean {
  return useSyncExternalStore(listen, () => matchMedia(wide).matches);
}

function listen(changed: () => void): () => void {
  const query = matchMedia(wide);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}
