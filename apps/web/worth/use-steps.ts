import { useEffect, useRef, useState } from "react";
import { type OpenSteps, openSteps } from "./open-steps.ts";
import type { StepList } from "./step-list.ts";

export type UsedSteps<Job, Item> = {
  /** null until something was asked */
  readonly list: StepList<Job, Item> | null;
  readonly stop: () => void;
  readonly goOn: () => void;
};

/**
 * A list that a worker fills step by step, begun anew for every other job; null begins nothing and leaves the list as
 * it is. `start` must be the same function at every render.
 */
export function useSteps<Job, Item>(start: () => Worker, job: Job | null): UsedSteps<Job, Item> {
  const [list, setList] = useState<StepList<Job, Item> | null>(null);
  const steps = useRef<OpenSteps<Job> | null>(null);
  const begun = useRef<Job | null>(null);
  useEffect(
    () => () => {
      steps.current?.close();
      steps.current = null;
      begun.current = null;
    },
    [],
  );
  useEffect(() => {
    if (job === null || begun.current === job) return;
    steps.current ??= openSteps(start, setList);
    begun.current = job;
    steps.current.begin(job);
  }, [start, job]);
  return { list, stop: () => steps.current?.stop(), goOn: () => steps.current?.goOn() };
}
