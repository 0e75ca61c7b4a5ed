import type { SessionState } from "#core/roll";
import { useEffect, useState } from "react";
import type { RecordOpen } from "../record/use-record.ts";

/** A session of the record; one too far away to be on the device is asked of the server by the date in its id. */
export function useSessionLook(
  { keeper, ready, silent, look }: RecordOpen,
  id: string,
): { readonly session: SessionState | undefined; readonly looked: boolean } {
  const session = look.session(id);
  const known = session !== undefined;
  const [looked, setLooked] = useState(false);
  useEffect(() => {
    if (known || (!ready && !silent)) return;
    void keeper.look(id.slice(-10)).then(() => setLooked(true));
  }, [keeper, id, known, ready, silent]);
  return { session, looked };
}
