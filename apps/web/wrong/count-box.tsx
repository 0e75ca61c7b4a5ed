import { useId } from "react";
import { describedBy, FieldRow } from "../fields/field-row.tsx";

type Props = {
  readonly label: string;
  readonly help?: string;
  readonly text: string;
  readonly put: (text: string) => void;
};

/** A whole number of people as it is typed. */
export function CountBox({ label, help, text, put }: Props) {
  const id = useId();
  const problem = countTyped(text) === null ? "Write a whole number of people." : null;
  return (
    <FieldRow id={id} label={label} help={help} unit="people" problem={problem}>
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text}
        aria-describedby={describedBy(id, { help, problem })}
        aria-invalid={problem === null ? undefined : true}
        onChange={(event) => put(event.target.value)}
      />
    </FieldRow>
  );
}

export function countTyped(text: string): number | null {
  return /^\d{1,4}$/.test(text.trim()) ? Number(text) : null;
}
