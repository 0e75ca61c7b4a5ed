import type { Problem } from "#core/words";
import { useEffect, useState } from "react";
import { ask } from "../api/ask.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import { withSignalWords } from "./no-signal.ts";
import type { PersonAt } from "./person-page.tsx";

type Shown = { readonly note: string | null };

/** The note, which is opened only when that is asked for and closed again when she looks away. */
export function HealthNote({ at: { practiceId, id } }: { readonly at: PersonAt }) {
  const [shown, setShown] = useState<Shown | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    const hide = () => setShown(null);
    document.addEventListener("visibilitychange", hide);
    return () => document.removeEventListener("visibilitychange", hide);
  }, []);
  const open = async () => {
    const people = `/api/practices/${encodeURIComponent(practiceId)}/record/people`;
    const answer = await ask(`${people}/${encodeURIComponent(id)}/note`);
    setProblems(answer.ok ? [] : withSignalWords(answer.problems));
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
    if (answer.ok) setShown(answer.value as Shown);
  };
  return (
    <div className="stack-close">
      <p>
        <button
          type="button"
          className="button"
          aria-expanded={shown !== null}
          onClick={() => (shown === null ? void open() : setShown(null))}
        >
          {shown === null ? "Show the note" : "Hide the note"}
        </button>
      </p>
      <output className="done-words">
        {shown === null ? null : (
          <span className="wording as-written">
            {shown.note ?? "There is no note: only the dot, or that nothing was to be said."}
          </span>
        )}
      </output>
      <ProblemList problems={problems} />
      <p className="small soft">
        Whoever has this page open can read it, and nobody else. It is kept sealed; the key lies beside the
        data file on the server and in no backup.
      </p>
    </div>
  );
}
