import { useEffect, useRef } from "react";
import { ProblemList } from "../parts/problem-list.tsx";
import type { Doing } from "./use-doing.ts";

/** What was done, or why it was not, where it was asked for; the room for it is there before. */
export function DoneWords({ doing: { says, problems } }: { readonly doing: Doing }) {
  const words = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // what was pressed may be gone with what was done: the focus goes on from here
    if (says.length > 0 && document.activeElement === document.body) words.current?.focus();
  }, [says]);
  return (
    <div ref={words} tabIndex={-1} className="done-words">
      <output>
        {says.map((it) => (
          <span key={it}>{it} </span>
        ))}
      </output>
      <ProblemList problems={problems} />
    </div>
  );
}
