import type { Problem } from "#core/words";
import { useId } from "react";

type Props = {
  readonly label: string;
  readonly help?: string;
  readonly text: string;
  readonly problem: Problem | undefined;
  readonly onText: (text: string) => void;
};

/** A length that is not there yet: what was typed, and what is wrong with it once it was asked for. */
export function LengthText({ label, help, text, problem, onText }: Props) {
  const id = useId();
  return (
    <p className="field">
      <label className="field-label" htmlFor={id}>
        {label}
        {help !== undefined && <span className="field-help">{help}</span>}
      </label>
      <input
        id={id}
        className="field-box"
        value={text}
        autoComplete="off"
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-problem`}
        onChange={(event) => onText(event.target.value)}
      />
      {problem !== undefined && (
        <span className="field-problem" id={`${id}-problem`}>
          {problem.says} {problem.next}
        </span>
      )}
    </p>
  );
}
