import type { Hall, ArrangedMatPlan } from "#core/hall";
import { useEffect, useLayoutEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
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
};

type Kept = { readonly good: Extract<Fit, { ok: true }> | null; readonly last: Fit | null };

/**
 * The mat plan of a hall, worked out in a worker: the latest hall wins, and the last plan stays until the next is
 * there. Null (a floor that is not sound) asks for nothing and keeps the last plan as an old one.
 */
export function useMatPlan(hall: Hall | null): Fitted {
  const [kept, setKept] = useState<Kept>({ good: null, last: null });
  const fitter = useRef<Fitter | null>(null);
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
  useAsk(hall, fitter);
  return {
    plan: kept.good?.plan ?? null,
    hall: kept.good?.hall ?? null,
    old: kept.good !== null && kept.good.hall !== hall,
    failure: kept.last !== null && !kept.last.ok && kept.last.hall === hall ? kept.last.says : null,
    milliseconds: kept.good?.milliseconds ?? null,
  };
}

function useAsk(hall: Hall | null, fitter: { readonly current: Fitter | null }): void {
  const asked = useRef<{ readonly hall: Hall; readonly by: Fitter } | null>(null);
  const ask = () => {
    const by = fitter.current;
    if (hall === null || by === null) return;
    if (asked.current?.hall === hall && asked.current.by === by) return;
    asked.current = { hall, by };
    by.ask(hall);
  };
  // before painting where the worker is there already, after it on the first time round
  useLayoutEffect(ask, [hall, fitter]);
  useEffect(ask, [hall, fitter]);
}
