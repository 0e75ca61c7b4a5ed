import { useQuery } from "@tanstack/react-query";
import type { KeptStream } from "#app/ports";
import { registerHeads } from "#app/record";
import type { HappenedDocument } from "#core/outlook";
import type { SessionState } from "#core/roll";
import { useMemo } from "react";
import { ask } from "../api/ask.ts";
import type { Opened } from "../drafts/use-draft.ts";

type Props = {
  readonly practiceId: string;
  readonly classId: string;
  readonly opened: Opened<HappenedDocument>;
};

/** The heads of closed registers, taken into the record of the class; what is written there stays. */
export function FromRegister({ practiceId, classId, opened }: Props) {
  const { data } = useQuery({
    queryKey: ["register-of", practiceId, classId],
    queryFn: () => ask(addressOf(practiceId, classId)),
  });
  const record = opened.draft.document;
  const fresh = useMemo(
    () => (data?.ok === true ? registerHeads(sessionsIn(data.value), record) : []),
    [data, record],
  );
  if (data?.ok !== true) return null;
  const take = () =>
    opened.keeper.change((before) => ({ ...before, sessions: [...before.sessions, ...fresh] }));
  const [count, are] =
    fresh.length === 1 ? ["1 closed register", "is"] : [`${fresh.length} closed registers`, "are"];
  return (
    <div className="stack-close" data-from-register>
      <output>
        {fresh.length === 0
          ? "Every closed register of this class is in its record."
          : `${count} of this class ${are} not in its record yet.`}
      </output>
      {fresh.length === 0 ? null : (
        <p>
          <button type="button" className="button" onClick={take}>
            Take the heads from the register
          </button>
        </p>
      )}
    </div>
  );
}

function addressOf(practice: string, id: string): string {
  const stretch = "from=2000-01-01T00:00:00Z&until=2200-01-01T00:00:00Z";
  return `/api/practices/${encodeURIComponent(practice)}/record/evenings?${stretch}&class=${encodeURIComponent(id)}`;
}

function sessionsIn(answer: unknown): readonly SessionState[] {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  const { streams } = answer as { readonly streams: readonly KeptStream[] };
  return (
    streams
      .filter(({ stream }) => stream.startsWith("session/"))
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
      .map(({ state }) => state as SessionState)
  );
}
