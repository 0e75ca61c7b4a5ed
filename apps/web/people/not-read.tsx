import { ProblemsError } from "../api/practices.ts";
import { ProblemList } from "../parts/problem-list.tsx";

type Props = { readonly error: Error; readonly again: () => unknown };

/** Why something of the record is not shown, and a way to ask once more. */
export function NotRead({ error, again }: Props) {
  if (!(error instanceof ProblemsError)) throw error;
  return (
    <div className="stack-close">
      <ProblemList problems={error.problems} />
      <p>
        <button type="button" className="button" onClick={() => void again()}>
          Try again
        </button>
      </p>
    </div>
  );
}
