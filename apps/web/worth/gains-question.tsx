import { type ArrangedMatPlan, byGain, type Gain, type Hall } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useRef, useState } from "react";
import { GainLines } from "./gain-lines.tsx";
import { Show } from "../parts/show.tsx";
import { gainsInShort } from "./gains-in-short.ts";
import type { GainsJob } from "./gains-worker.ts";
import { Question } from "./question.tsx";
import { StepButtons } from "./step-buttons.tsx";
import { useSteps } from "./use-steps.ts";

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
  const [job, setJob] = useState({ hall, plan, units });
  // a bound that comes down while a search goes on changes no gain
  if (job.hall !== hall || job.units !== units || !sameMats(job.plan, plan)) setJob({ hall, plan, units });
  const steps = useSteps<GainsJob, Gain<ArrangedMatPlan>>(startGainsWorker, open ? job : null);
  const { list } = steps;
  const mine = list?.job.hall === hall ? list : null;
  const gaining = byGain(mine?.items ?? []).filter((it) => it.gain > 0);
  const others = (mine?.items ?? []).filter((it) => it.gain <= 0);
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
          <GainLines {...lines} gains={mine.state === "done" ? gaining : mine.items} />
          {mine.state === "done" && others.length > 0 && (
            <Show summary={`Tried too, and gaining nothing: ${others.length}`}>
              <GainLines {...lines} gains={others} />
            </Show>
          )}
          <StepButtons steps={steps} {...mine} />
          {mine.notes.map((says) => (
            <p key={says} className="small soft">
              {says}
            </p>
          ))}
        </>
      )}
    </Question>
  );
}

function sameMats(one: ArrangedMatPlan, other: ArrangedMatPlan): boolean {
  return one.arrangement === other.arrangement && one.count === other.count;
}

function startGainsWorker(): Worker {
  return new Worker(new URL("./gains-worker.ts", import.meta.url), { type: "module" });
}
