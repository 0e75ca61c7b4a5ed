import { useQuery, useQueryClient } from "@tanstack/react-query";
import { useEffect, useMemo, useSyncExternalStore } from "react";
import { practiceQuery } from "../api/practices.ts";
import type { Draft } from "./draft.ts";
import type { Keeper } from "./keeper.ts";
import { keeperFor, knownVersion } from "./keepers.ts";
import type { Documents, Kind } from "./kept-drafts.ts";

export type Opened<Document> = { readonly keeper: Keeper<Document>; readonly draft: Draft<Document> };

/** Opens a document for editing; null when neither the server nor this device has it. */
export function useDraft<K extends Kind>(
  practice: string,
  kind: K,
  id: string | null,
): Opened<Documents[K]> | null {
  const queries = useQueryClient();
  const { data } = useQuery(practiceQuery(practice));
  const keeper = useMemo(
    // a document that was not there may have come with the data
    () => (id === null || data === undefined ? null : keeperFor(queries, practice, kind, id)),
    [queries, practice, kind, id, data],
  );
  const draft = useSyncExternalStore(keeper?.subscribe ?? silent, () => keeper?.read() ?? null);
  useEffect(() => {
    if (keeper === null) return;
    const retry = () => void keeper.flush();
    // the browser asks before it closes a page whose work is nowhere else
    const warn = (event: Event) => {
      if (keeper.read().unsent && !keeper.onDevice()) event.preventDefault();
    };
    globalThis.addEventListener("online", retry);
    globalThis.addEventListener("pagehide", retry);
    globalThis.addEventListener("beforeunload", warn);
    return () => {
      globalThis.removeEventListener("beforeunload", warn);
      globalThis.removeEventListener("online", retry);
      globalThis.removeEventListener("pagehide", retry);
    };
  }, [keeper]);
  useEffect(() => {
    if (keeper === null || id === null || data === undefined) return;
    const known = knownVersion(queries, practice, kind, id);
    if (known !== null) keeper.heard(known.version, known.document);
    if (keeper.read().unsent && data.silent === null) void keeper.flush();
  }, [keeper, queries, practice, kind, id, data]);
  return useMemo(() => (keeper === null || draft === null ? null : { keeper, draft }), [keeper, draft]);
}

function silent() {
  return () => undefined;
}
