import { useEffect, useRef, useState } from "react";
import type { GainsJob } from "./gains-messages.ts";
import type { GainsList } from "./gains-list.ts";
import { type Gains, openGains } from "./open-gains.ts";

export type UsedGains = {
  /** null until something was asked */
  readonly list: GainsList | null;
  readonly stop: () => void;
  readonly goOn: () => void;
};

/** What would gain a mat, begun anew for every other job; null begins nothing and leaves the list as it is. */
export function useGains(job: GainsJob | null): UsedGains {
  const [list, setList] = useState<GainsList | null>(null);
  const gains = useRef<Gains | null>(null);
  const begun = useRef<GainsJob | null>(null);
  useEffect(
    () => () => {
      gains.current?.close();
      gains.current = null;
      begun.current = null;
    },
    [],
  );
  useEffect(() => {
    if (job === null || begun.current === job) return;
    gains.current ??= openGains(setList);
    begun.current = job;
    gains.current.begin(job);
  }, [job]);
  return { list, stop: () => gains.current?.stop(), goOn: () => gains.current?.goOn() };
}
