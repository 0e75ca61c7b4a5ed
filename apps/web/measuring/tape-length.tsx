import type { LengthUnits, Problem } from "#core/words";
import { useId } from "react";
import type { TypedLength } from "./measuring.ts";

type Props = {
  readonly label: string;
  readonly units: LengthUnits;
  readonly typed: TypedLength;
  readonly problem: Problem | undefined;
  readonly onType: (typed: TypedLength) => void;
  /** the cursor goes here when it appears */
  readonly focused?: boolean;
};

/** A length in figures large enough for a thumb and a dim hall: metres in one box, feet and inches in two. */
export function TapeLength({ label, units, typed, problem, onType, focused = false }: Props) {
  const id = useId();
  const says = problem === undefined ? undefined : `${id}-problem`;
  const common = {
    className: "field-box tape-figure",
    type: "text",
    inputMode: "decimal",
    autoComplete: "off",
    enterKeyHint: "next",
    "aria-invalid": problem === undefined ? undefined : true,
    "aria-describedby": says,
  } as const;
  const { length, inches } = typed;
  const first = (
    <input
      {...common}
      id={id}
      value={length}
      ref={focused ? takeFocus : null}
      aria-label={units === "metric" ? undefined : `${label}, feet`}
      onChange={(event) => onType({ length: event.target.value, inches })}
    />
  );
  return (
    <div className="tape-length">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {units === "metric" ? (
        <span className="tape-boxes">
          {first}
          <span className="tape-unit">m</span>
        </span>
      ) : (
        <span className="tape-boxes">
          {first}
          <span className="tape-unit">ft</span>
          <input
            {...common}
            value={inches}
            aria-label={`${label}, inches`}
            onChange={(event) => onType({ length, inches: event.target.value })}
          />
          <span className="tape-unit">in</span>
        </span>
      )}
      <span className="field-problem tape-problem" id={`${id}-problem`} aria-live="polite">
        {problem === undefined ? "" : `${problem.says} ${problem.next}`}
      </span>
    </div>
  );
}

function takeFocus(input: HTMLInputElement | null): void {
  if (input === null || document.activeElement === input) return;
  input.focus();
}
