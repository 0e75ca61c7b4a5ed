import { ProblemList } from "../parts/problem-list.tsx";
import type { Doing } from "./use-doing.ts";

/** What was done, or why it was not, where it was asked for; the room for it is there before. */
export function DoneWords({
  doing,
  hide = [],
}: {
  readonly doing: Doing;
  readonly hide?: readonly string[];
}) {
  const shown = doing.problems.filter(({ place }) => !hide.includes(place));
  return (
    <div className="done-words">
      <output>
        {doing.says.map((it) => (
          <span key={it}>{it} </span>
        ))}
      </output>
      <ProblemList problems={shown} />
    </div>
  );
}
