import type { SessionState } from "#core/roll";
import type { Problem } from "#core/words";
import { useEffect, useState } from "react";
import type { RecordOpen } from "./use-record.ts";

export type SessionLook = {
  readonly session: SessionState | undefined;
  /** whether the server was asked for one that is not on this device */
  readonly looked: boolean;
  readonly problems: readonly Problem[];
};

/** A session of the record; one too far away to be on the device is asked of the server by the date its id ends with. */
export function useSessionLook({ keeper, ready, silent, look }: RecordOpen, id: string): SessionLook {
  const session = look.session(id);
  const known = session !== undefined;
  const [looked, setLooked] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    if (known || (!ready && !silent)) return;
    const lookUp = async () => {
      const answer = await keeper.look(id.slice(-10));
      setProblems(answer.ok ? [] : answer.problems);
      setLooked(true);
    };
    void lookUp();
  }, [keeper, id, known, ready, silent]);
  return { session, looked, problems };
}
