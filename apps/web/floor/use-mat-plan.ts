import type { ArrangedMatPlan, Arrangement, Hall } from "#core/hall";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { flushSync } from "react-dom";
import type { FitJob, Search } from "./fit-messages.ts";
import { type Fit, type Fitter, openFitter } from "./fitter.ts";

export type Fitted = {
  /** the last plan there is; null before the first */
  readonly plan: ArrangedMatPlan | null;
  /** the hall that `plan` belongs to */
  readonly hall: Hall | null;
  /** a plan for a newer hall is being worked out, or there is no sound hall now: `plan` is an old one */
  readonly old: boolean;
  /** the plan for the hall asked about could not be worked out */
  readonly failure: string | null;
  /** how long the last plan took in the worker */
  readonly milliseconds: number | null;
  /** how far the search has come that may still better `plan`; null where there is none */
  readonly search: Search | null;
  readonly rest: () => void;
  readonly goOn: () => void;
};

type Kept = { readonly good: Extract<Fit, { ok: true }> | null; readonly last: Fit | null };

/**
 * The mat plan of a hall, worked out in a worker: the latest hall wins, and the last plan stays until the next is
 * there. Null (a floor that is not sound) asks for nothing and keeps the last plan as an old one.
 */
export function useMatPlan(hall: Hall | null, arrangement: Arrangement = "lines"): Fitted {
  const [kept, setKept] = useState<Kept>({ good: null, last: null });
  const fitter = useRef<Fitter | null>(null);
  const job = useMemo(() => (hall === null ? null : { hall, arrangement }), [hall, arrangement]);
  useEffect(() => {
    const opened = openFitter((fit) => {
      // in the frame at hand, not in a later task: a drag redraws once with its plan
      flushSync(() => setKept((before) => ({ good: fit.ok ? fit : before.good, last: fit })));
    });
    fitter.current = opened;
    return () => {
      fitter.current = null;
      opened.close();
    };
  }, []);
  useAsk(job, fitter);
  const { good, last } = kept;
  return {
    plan: good?.plan ?? null,
    hall: good?.job.hall ?? null,
    old: good !== null && good.job !== job,
    failure: last !== null && !last.ok && last.job === job ? last.says : null,
    milliseconds: good?.milliseconds ?? null,
    search: good?.job === job ? (good?.search ?? null) : null,
    rest: () => fitter.current?.rest(),
    goOn: () => fitter.current?.goOn(),
  };
}

function useAsk(job: FitJob | null, fitter: { readonly current: Fitter | null }): void {
  const asked = useRef<{ readonly job: FitJob; readonly by: Fitter } | null>(null);
  const ask = () => {
    const by = fitter.current;
    if (job === null || by === null) return;
    if (asked.current?.job === job && asked.current.by === by) return;
    asked.current = { job, by };
    by.ask(job);
  };
  // before painting where the worker is there already, after it on the first time round
  useLayoutEffect(ask, [job, fitter]);
  useEffect(ask, [job, fitter]);
}
