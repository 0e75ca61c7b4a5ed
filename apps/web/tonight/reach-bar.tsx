import { ProblemList } from "../parts/problem-list.tsx";
import type { Said } from "./register-here.ts";
import type { Over } from "./session-register.tsx";
import type { Marked } from "./use-marks.ts";

type Props = {
  readonly said: Said;
  readonly last: Marked | undefined;
  readonly undo: () => void;
  readonly open: (over: Over) => void;
};

/** What a thumb must reach without looking: taking the last mark back, a walk-in, the heads; above it the last answer. */
export function ReachBar({ said, last, undo, open }: Props) {
  return (
    <div className="reach-bar no-print">
      <output className="reach-said">{said.says.join(" ")}</output>
      <ProblemList problems={said.problems} />
      <div className="reach-buttons">
        <button type="button" className="button reach" disabled={last === undefined} onClick={undo}>
          {last === undefined ? "Undo" : `Undo ${last.name}`}
        </button>
        <button type="button" className="button button-main reach" onClick={() => open("walk in")}>
          Walk-in
        </button>
        <button type="button" className="button reach" onClick={() => open("heads")}>
          Heads
        </button>
      </div>
    </div>
  );
}
