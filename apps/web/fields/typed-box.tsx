import { type ReactNode, useId, useState } from "react";
import type { Problem, Result } from "#core/words";
import { describedBy, FieldRow } from "./field-row.tsx";
import { useFormField } from "./form.tsx";
import { GuessMark } from "./guess-mark.tsx";

type Props<Value> = {
  readonly path: string;
  readonly label: string;
  readonly help?: string | undefined;
  readonly unit?: string | undefined;
  /** how the value stands in the box when nobody is typing */
  readonly shown: string;
  readonly read: (text: string) => Result<Value>;
  readonly put: (value: Value) => void;
  readonly inputMode: "decimal" | "numeric" | "text";
  /** this figure may be a guess */
  readonly guessable?: boolean;
  readonly after?: ReactNode;
};

/**
 * A box whose text is read at every key. Text that cannot be used stays in the box with the problem in
 * words under it, and the document keeps its last good value.
 */
export function TypedBox<Value>(props: Props<Value>) {
  const { path, label, help, unit, shown, read, put, inputMode, guessable = false, after } = props;
  const id = useId();
  const field = useFormField(path);
  const [typing, setTyping] = useState<string | null>(null);
  const text = field.typed ?? typing ?? shown;
  const problem = problemOf(field.typed, read) ?? field.problem;
  const change = (next: string) => {
    setTyping(next);
    const answer = read(next);
    field.type(answer.ok ? null : next);
    if (!answer.ok) return;
    put(answer.value);
    if (field.guess === true && next.trim() !== shown) field.setGuess(false);
  };
  const says = problem === null ? null : `${problem.says} ${problem.next}`;
  return (
    <FieldRow
      id={id}
      label={label}
      help={help}
      unit={unit}
      problem={says}
      after={
        <>
          {guessable && field.guess !== null ? (
            <GuessMark label={label} guess={field.guess} onChange={field.setGuess} />
          ) : null}
          {after}
        </>
      }
    >
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode={inputMode}
        autoComplete="off"
        value={text}
        aria-invalid={problem === null ? undefined : true}
        aria-describedby={describedBy(id, { help, unit, problem: says })}
        onChange={(event) => change(event.target.value)}
        onBlur={() => setTyping(null)}
      />
    </FieldRow>
  );
}

function problemOf<Value>(typed: string | undefined, read: (text: string) => Result<Value>): Problem | null {
  if (typed === undefined) return null;
  const answer = read(typed);
  return answer.ok ? null : (answer.problems[0] ?? null);
}
