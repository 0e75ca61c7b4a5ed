/**
 * What was, what is, what was undone. { past: [a, b], present: c, future: [d] }: undo gives b, redo gives d.
 * Steps with the same key in a row are one step: a drag of forty moves is undone at once.
 * A value is never undefined.
 */
export type History<Value> = {
  readonly past: readonly Value[];
  readonly present: Value;
  readonly future: readonly Value[];
  /** key of the last step; undefined after an undo or a redo, so that the next step stands alone */
  readonly key: string | undefined;
};

/** 200 steps are more than an evening of drawing and, at about 2 kB a floor, less than half a megabyte. */
export const LONGEST_HISTORY = 200;

export function historyOf<Value>(present: Value): History<Value> {
  return { past: [], present, future: [], key: undefined };
}

/** The next value; the same value again changes nothing. What was undone can then no longer be redone. */
export function takeStep<Value>(history: History<Value>, next: Value, key?: string): History<Value> {
  if (Object.is(next, history.present)) return history;
  const joins = key !== undefined && key === history.key;
  const past = joins ? history.past : [...history.past, history.present].slice(-LONGEST_HISTORY);
  return { past, present: next, future: [], key };
}

/** The value before; the same history where there is none. */
export function undo<Value>(history: History<Value>): History<Value> {
  const { past, present, future } = history;
  const before = past.at(-1);
  if (before === undefined) return history;
  return { past: past.slice(0, -1), present: before, future: [present, ...future], key: undefined };
}

/** The value that was undone last; the same history where there is none. */
export function redo<Value>(history: History<Value>): History<Value> {
  const { past, present, future } = history;
  const [next, ...later] = future;
  if (next === undefined) return history;
  return { past: [...past, present], present: next, future: later, key: undefined };
}

export function canUndo<Value>(history: History<Value>): boolean {
  return history.past.length > 0;
}

export function canRedo<Value>(history: History<Value>): boolean {
  return history.future.length > 0;
}
