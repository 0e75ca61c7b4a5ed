import { useEffect, useState } from "react";

// for as long as the page is open, and nowhere else: what is typed about people is on no disk before it is kept
const typed = new Map<string, unknown>();

/**
 * What somebody is typing into a form, which is there again when she comes back to it. The browser asks before it
 * closes a page with something typed. Not for what is said about health: that is gone with its form.
 */
export function useTyped<Value>(key: string, first: Value) {
  const [value, setValue] = useState<Value>(() => {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the key names the form that put it there
    return typed.has(key) ? (typed.get(key) as Value) : first;
  });
  const put = (next: Value) => {
    typed.set(key, next);
    setValue(next);
  };
  const clear = (next: Value) => {
    typed.delete(key);
    setValue(next);
  };
  useEffect(() => {
    globalThis.addEventListener("beforeunload", askFirst);
    return () => globalThis.removeEventListener("beforeunload", askFirst);
  }, []);
  return { value, put, clear, touched: typed.has(key) };
}

function askFirst(event: BeforeUnloadEvent): void {
  if (typed.size > 0) event.preventDefault();
}
