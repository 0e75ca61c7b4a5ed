import {
  createContext,
  type ReactNode,
  useContext,
  useLayoutEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from "react";
import type { CurrencyCode, Problem } from "#core/words";
import { type FormStore, formStore } from "./form-store.ts";

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

const FormContext = createContext<FormStore | null>(null);

/** Gives the fields inside it their form; each is drawn again only when what it sees of it has changed. */
export function FormOf({ form, children }: { readonly form: Form; readonly children: ReactNode }) {
  const [store] = useState(() => formStore(form));
  useLayoutEffect(() => store.write(form), [store, form]);
  return <FormContext value={store}>{children}</FormContext>;
}

/** What a field at a path sees of its form. */
export function useFormField(path: string) {
  const store = useContext(FormContext);
  if (store === null) throw new Error(`the field ${path} stands outside a form`);
  const seen = useSyncExternalStore(store.subscribe, () => store.field(path));
  return useMemo(
    () => ({
      ...seen,
      type: (text: string | null) => store.read().type(path, text),
      setGuess: (guess: boolean) => store.read().setGuess(path, guess),
    }),
    [seen, store, path],
  );
}

/** Forgets the texts of the fields whose paths begin so; does nothing outside a form. */
export function useDropTyped(): (start: string) => void {
  const store = useContext(FormContext);
  return (start) => store?.read().dropTyped(start);
}
