import type { CurrencyCode, Problem } from "#core/words";
import type { Form } from "./form.tsx";

/** What one field sees of its form; the same object while nothing of it changes. */
export type FieldSeen = {
  readonly currency: CurrencyCode;
  readonly typed: string | undefined;
  readonly problem: Problem | null;
  readonly guess: boolean | null;
};

/** The newest form of a document, and who wants to hear of the next. */
export type FormStore = {
  readonly read: () => Form;
  readonly write: (form: Form) => void;
  readonly subscribe: (listener: () => void) => () => void;
  readonly field: (path: string) => FieldSeen;
};

/** A form changes at every key, and almost every field sees the same of it as before. */
export function formStore(first: Form): FormStore {
  let form = first;
  const listeners = new Set<() => void>();
  const seen = new Map<string, FieldSeen>();
  return {
    read: () => form,
    write: (next) => {
      if (next === form) return;
      form = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    field: (path) => {
      const before = seen.get(path);
      const now = fieldOf(form, path);
      if (before !== undefined && isSame(before, now)) return before;
      seen.set(path, now);
      return now;
    },
  };
}

function fieldOf(form: Form, path: string): FieldSeen {
  return {
    currency: form.currency,
    typed: form.typed[path],
    problem: form.problems.find((it) => it.place === path) ?? null,
    guess: form.isGuess === null ? null : form.isGuess(path),
  };
}

function isSame(a: FieldSeen, b: FieldSeen): boolean {
  return (
    a.currency === b.currency &&
    a.typed === b.typed &&
    a.guess === b.guess &&
    a.problem?.says === b.problem?.says &&
    a.problem?.next === b.problem?.next
  );
}
