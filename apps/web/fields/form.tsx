import { createContext, type ReactNode, useContext, useMemo } from "react";
import type { CurrencyCode, Problem } from "#core/words";

/** What every field of one document needs to know. Paths are those of problems: "costs.travel". */
export type Form = {
  readonly currency: CurrencyCode;
  /** text that stands in fields although it cannot be used, by path */
  readonly typed: Readonly<Record<string, string>>;
  readonly type: (path: string, text: string | null) => void;
  /** forgets the texts of the fields whose paths begin so */
  readonly dropTyped: (start: string) => void;
  /** problems of the whole document, by the place each names */
  readonly problems: readonly Problem[];
  /** whether a path is still a guess; null where the document has no guesses */
  readonly isGuess: ((path: string) => boolean) | null;
  readonly setGuess: (path: string, guess: boolean) => void;
};

export const FormContext = createContext<Form | null>(null);

/** Gives the fields inside it their form. */
export function FormOf({ form, children }: { readonly form: Form; readonly children: ReactNode }) {
  return <FormContext value={form}>{children}</FormContext>;
}

/** What a field at a path sees of its form. */
export function useFormField(path: string) {
  const form = useContext(FormContext);
  if (form === null) throw new Error(`the field ${path} stands outside a form`);
  return useMemo(
    () => ({
      currency: form.currency,
      typed: form.typed[path],
      type: (text: string | null) => form.type(path, text),
      problem: form.problems.find((it) => it.place === path) ?? null,
      guess: form.isGuess === null ? null : form.isGuess(path),
      setGuess: (guess: boolean) => form.setGuess(path, guess),
    }),
    [form, path],
  );
}
