import { useFormField } from "./form.tsx";
import { GuessMark } from "./guess-mark.tsx";

/** The mark of a figure, or of a group of figures, that may be a guess. */
export function GuessAt({ path, label }: { readonly path: string; readonly label: string }) {
  const field = useFormField(path);
  if (field.guess === null) return null;
  return <GuessMark label={label} guess={field.guess} onChange={field.setGuess} />;
}
