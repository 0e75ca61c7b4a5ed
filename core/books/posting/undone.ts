import { type Entry, entry } from "./entry.ts";

/** The entry that undoes another one on a day: the same lines with their signs turned. */
export function undone(it: Entry, on: string): Entry {
  const lines = it.lines.map((line) => ({ ...line, amount: -line.amount }));
  return entry(on, lines, { ...it.about, what: `undone: ${it.about.what}` });
}
