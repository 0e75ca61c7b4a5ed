import { currencyCodes, isCurrency } from "#core/words";
import { useState } from "react";
import type { Form } from "../fields/form.tsx";

/** A form whose values the page holds itself: it only keeps what was typed and cannot be used. */
export function useOwnForm(currency: string) {
  const [typed, setTyped] = useState<Form["typed"]>({});
  const [pound] = currencyCodes();
  if (pound === undefined) throw new Error("there is no currency at all");
  const form: Form = {
    currency: isCurrency(currency) ? currency : pound,
    typed,
    type: (path, text) =>
      setTyped((before) => {
        const { [path]: _, ...others } = before;
        return text === null ? others : { ...others, [path]: text };
      }),
    dropTyped: (start) =>
      setTyped((before) =>
        Object.fromEntries(Object.entries(before).filter(([path]) => !path.startsWith(start))),
      ),
    problems: [],
    isGuess: null,
    setGuess: () => {},
  };
  return { form, hasSlips: Object.keys(typed).length > 0, forget: () => setTyped({}) };
}
