import { useId, useRef, useState } from "react";
import type { Problem, Result } from "#core/words";
import { ProblemList } from "./problem-list.tsx";

type Props = {
  /** "Delete Tithe Barn Hall" */
  readonly label: string;
  readonly warning: string;
  readonly remove: () => Promise<Result<null>>;
  readonly removed: () => void;
};

/** Deletes after asking once, in the browser's own modal dialog, which holds the focus and gives it back. */
export function DeleteButton({ label, warning, remove, removed }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const confirm = async () => {
    const answer = await remove();
    if (!answer.ok) {
      setProblems(answer.problems);
      return;
    }
    dialog.current?.close();
    removed();
  };
  return (
    <>
      <button type="button" className="button" onClick={() => dialog.current?.showModal()}>
        {label} …
      </button>
      <dialog ref={dialog} className="ask" aria-labelledby={title} onClose={() => setProblems([])}>
        <div className="stack">
          <h2 id={title}>{label}?</h2>
          <p>{warning}</p>
          <ProblemList problems={problems} />
          <p className="row">
            {/* the first button gets the focus: a key pressed too often must not delete */}
            <button type="button" className="button" onClick={() => dialog.current?.close()}>
              Keep it
            </button>
            <button type="button" className="button button-main" onClick={() => void confirm()}>
              Delete it
            </button>
          </p>
        </div>
      </dialog>
    </>
  );
}
