import { useQuery, useQueryClient } from "@tanstack/react-query";
import { useEffect } from "react";
import { practiceQuery } from "../api/practices.ts";
import { keeperFor, knownVersion } from "./keepers.ts";
import { keptDraft, keptDraftIds } from "./kept-drafts.ts";

const kinds = ["halls", "classes", "happened", "plans"] as const;

/**
 * Sends what an earlier visit left unsent on this device, on whatever page of the practice she is: a hall that was
 * measured with no signal is delivered when the signal is back, not only when its own page is opened.
 */
export function useDelivery(practice: string): void {
  const queries = useQueryClient();
  const { data } = useQuery(practiceQuery(practice));
  useEffect(() => {
    if (data === undefined || data.silent !== null) return;
    for (const kind of kinds)
      for (const id of keptDraftIds(practice, kind)) {
        const kept = keptDraft(practice, kind, id);
        if (kept === null || (!kept.unsent && kept.sending === null)) continue;
        const keeper = keeperFor(queries, practice, kind, id);
        const known = knownVersion(queries, practice, kind, id);
        // a version that came meanwhile is told as a clash, never overwritten
        if (known !== null) keeper?.heard(known.version, known.document);
        void keeper?.flush();
      }
  }, [queries, practice, data]);
}
