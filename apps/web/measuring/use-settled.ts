import { useEffect, useState } from "react";

/** A moment longer than between two figures of a typed length, in milliseconds. */
const PAUSE = 350;

/**
 * The value once it has stood still for a moment. Closing 20 walls of which one is wrong takes 0.05 s on a desk
 * computer and 60 walls 0.6 s, a phone several times that: not between one figure and the next.
 */
export function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}
