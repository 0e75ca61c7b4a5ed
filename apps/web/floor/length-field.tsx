import type { LengthUnits, Millimetres, Problem } from "#core/words";
import { type KeyboardEvent, useId, useRef, useState } from "react";
import { entryText, refused, takeEntry, typing, untouched } from "./length-entry.ts";

export type LengthFieldProps = {
  readonly label: string;
  /** millimetres */
  readonly length: number;
  readonly units: LengthUnits;
  /** sets the length; a problem where the floor cannot take it */
  readonly onSet: (length: Millimetres) => Problem | null;
  /** the label is for screen readers only, because the table says it already */
  readonly quiet?: boolean;
  /** a place on the floor rather than a length: may be below nothing */
  readonly signed?: boolean;
  /** called when the field is done with: after Enter took a length, or Escape */
  readonly onDone?: () => void;
  readonly focused?: boolean;
};

/** A length that can be typed over: Enter or leaving sets it, Escape puts back what stood there. */
export function LengthField(props: LengthFieldProps) {
  const { label, length, units, onSet, quiet = false, signed = false, onDone, focused = false } = props;
  const [entry, setEntry] = useState(untouched);
  const id = useId();
  // a field that goes away is left as well: what was taken or let go must not be taken again
  const done = useRef(false);
  const finish = () => {
    done.current = onDone !== undefined;
    onDone?.();
  };
  const take = (): boolean => {
    const taken = takeEntry(entry, length, units, signed);
    const problem = taken.length === null ? null : onSet(taken.length);
    const next = problem === null ? taken.entry : refused(entry.typed ?? "", problem);
    setEntry(next);
    return next.problem === null;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    event.stopPropagation();
    if (event.key === "Enter") {
      event.preventDefault();
      if (take()) finish();
    }
    if (event.key === "Escape") {
      setEntry(untouched);
      finish();
    }
  };
  return (
    <span className="floor-length">
      <label className={quiet ? "unseen" : "field-label"} htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="field-box"
        value={entryText(entry, length, units)}
        autoComplete="off"
        spellCheck={false}
        ref={focused ? takeFocus : null}
        aria-invalid={entry.problem !== null}
        aria-describedby={entry.problem === null ? undefined : `${id}-problem`}
        onChange={(event) => setEntry(typing(event.target.value))}
        onKeyDown={onKeyDown}
        onBlur={() => {
          if (!done.current && (entry.typed === null || take())) finish();
        }}
      />
      {entry.problem && (
        <span className="field-problem" id={`${id}-problem`} role="alert">
          {entry.problem.says} {entry.problem.next}
        </span>
      )}
    </span>
  );
}

function takeFocus(input: HTMLInputElement | null): void {
  if (input === null || document.activeElement === input) return;
  input.focus();
  input.select();
}
