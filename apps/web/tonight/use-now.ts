import { useEffect, useState } from "react";

/** The time by this device, ISO, taken anew every half minute: for what is tonight and what has begun. */
export function useNow(): string {
  const [now, setNow] = useState(() => new Date().toISOString());
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date().toISOString()), 30_000);
    return () => clearInterval(timer);
  }, []);
  return now;
}
