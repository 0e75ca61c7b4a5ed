import type { Gain, Hall, ArrangedMatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useMemo, useRef, useState } from "react";
import { GainLines } from "./gain-lines.tsx";
import { Show } from "../parts/show.tsx";
import { gainsInShort } from "./gains-list.ts";
import { Question } from "./question.tsx";
import { useGains } from "./use-gains.ts";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  /** makes the hall the one that is drawn, as one step to undo */
  readonly become: (hall: Hall) => void;
};

/** What each single change would gain, worked out while she reads, to be tried, taken back or kept. */
export function GainsQuestion({ hall, plan, units, become }: Props) {
  const [open, setOpen] = useState(false);
  const [tried, setTried] = useState<Gain<ArrangedMatPlan> | null>(null);
  const [kept, setKept] = useState<string | null>(null);
  const told = useRef<HTMLOutputElement>(null);
  const job = useMemo(() => ({ hall, plan, units }), [hall, plan, units]);
  const { list, stop, goOn } = useGains(open ? job : null);
  const mine = list?.job.hall === hall ? list : null;
  const gaining = (mine?.gains ?? []).filter((it) => it.gain > 0);
  const others = (mine?.gains ?? []).filter((it) => it.gain <= 0);
  const keep = (gain: Gain<ArrangedMatPlan>) => {
    setTried(null);
    setKept(gain.says);
    become(gain.hall);
    told.current?.focus({ preventScroll: true });
  };
  const lines = { units, tried, put: setTried, keep };
  return (
    <Question
      title="What would gain a mat"
      says={mine === null ? "Each single change is tried when you open this." : gainsInShort(mine)}
      onOpen={setOpen}
    >
      <output ref={told} tabIndex={-1} className={kept === null ? "unseen" : "told"}>
        {kept === null ? "" : `Kept: ${kept}. Undo, above the drawing, brings the hall back. `}
        {mine === null || mine.state === "running" ? "" : gainsInShort(mine)}
      </output>
      {mine !== null && (
        <>
          <GainLines {...lines} gains={mine.state === "done" ? gaining : mine.gains} />
          {mine.state === "done" && others.length > 0 && (
            <Show summary={`Tried too, and gaining nothing: ${others.length}`}>
              <GainLines {...lines} gains={others} />
            </Show>
          )}
          <p className="row">
            {mine.state === "running" && (
              <button type="button" className="button" onClick={stop}>
                Stop
              </button>
            )}
            {mine.state === "stopped" && (
              <button type="button" className="button" onClick={goOn}>
                Go on
              </button>
            )}
            <span className="small soft">
              {mine.state === "done" || mine.total === null
                ? ""
                : `${mine.gains.length} of ${mine.total} tried`}
            </span>
          </p>
          {mine.leftOut.map((says) => (
            <p key={says} className="small soft">
              {says}
            </p>
          ))}
        </>
      )}
    </Question>
  );
}
