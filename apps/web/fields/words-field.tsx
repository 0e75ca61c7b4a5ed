import { type ReactNode, useId } from "react";
import { describedBy, FieldRow } from "./field-row.tsx";

type Props = {
  readonly label: string;
  readonly help?: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly problem?: string | null;
  /** lines for more than a few words */
  readonly long?: boolean;
  readonly after?: ReactNode;
};

/** Words, short or long. */
export function WordsField({ label, help, value, onChange, problem, long = false, after }: Props) {
  const id = useId();
  const common = {
    id,
    className: "field-box field-words",
    value,
    "aria-describedby": describedBy(id, { help, problem }),
    "aria-invalid": problem ? true : undefined,
  };
  return (
    <FieldRow id={id} label={label} help={help} problem={problem} wide after={after}>
      {long ? (
        <textarea {...common} rows={3} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input
          {...common}
          type="text"
          autoComplete="off"
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </FieldRow>
  );
}
