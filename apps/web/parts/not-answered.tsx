import type { Problem } from "#core/words";
import { ProblemList } from "./problem-list.tsx";

/** Why there is no answer: something is not known yet, or something that was entered cannot be used. */
export type NoAnswer =
  | { readonly kind: "missing"; readonly says: string; readonly next: string }
  | { readonly kind: "unsound"; readonly problems: readonly Problem[] };

/** Stands where an answer would, and says what to do to get one. */
export function NotAnswered({ why }: { readonly why: NoAnswer }) {
  const unsound = why.kind === "unsound";
  return (
    <div className="stack-close">
      <p className="answer" data-withheld>
        {unsound ? "Not worked out, because something that was entered cannot be used." : why.says}
      </p>
      {unsound ? <ProblemList problems={why.problems} announce={false} /> : <p>{why.next}</p>}
    </div>
  );
}
