import { useEffect, useMemo, useRef, useState } from "react";
import { keepMeasuring, keptMeasuring } from "./kept-measurings.ts";
import type { Measuring } from "./measuring.ts";

export type OpenedMeasuring = {
  readonly measuring: Measuring;
  readonly change: (recipe: (before: Measuring) => Measuring) => void;
  /** whether the last change is on the device */
  readonly onDevice: boolean;
};

/** A hall that is being measured, on the device at every key; null where this device has none of that id. */
export function useMeasuring(practice: string, id: string): OpenedMeasuring | null {
  const [measuring, setMeasuring] = useState(() => keptMeasuring(practice, id));
  const [onDevice, setOnDevice] = useState(true);
  const latest = useRef(measuring);
  useEffect(() => {
    // another window of this device has the same hall open: the later key counts
    const follow = () => {
      latest.current = keptMeasuring(practice, id) ?? latest.current;
      setMeasuring(latest.current);
    };
    globalThis.addEventListener("storage", follow);
    return () => globalThis.removeEventListener("storage", follow);
  }, [practice, id]);
  useEffect(() => {
    // the browser asks before it closes a page whose work is nowhere else
    const warn = (event: Event) => {
      if (!onDevice) event.preventDefault();
    };
    globalThis.addEventListener("beforeunload", warn);
    return () => globalThis.removeEventListener("beforeunload", warn);
  }, [onDevice]);
  const change = useMemo(
    () => (recipe: (before: Measuring) => Measuring) => {
      if (latest.current === null) return;
      latest.current = recipe(latest.current);
      // before anything is drawn: a page that is closed now has lost nothing
      setOnDevice(keepMeasuring(practice, id, latest.current));
      setMeasuring(latest.current);
    },
    [practice, id],
  );
  return measuring === null ? null : { measuring, change, onDevice };
}
