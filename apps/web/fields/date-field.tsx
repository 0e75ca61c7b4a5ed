import { type ReactNode, useId } from "react";
import { describedBy, FieldRow } from "./field-row.tsx";

type Props = {
  readonly label: string;
  readonly help?: string | undefined;
  /** ISO date or HH:MM */
  readonly value: string;
  readonly put: (value: string) => void;
  readonly type?: "date" | "time";
  readonly problem?: string | null;
  readonly after?: ReactNode;
};

/** A date or a time of day, by the device's own picker, which keeps to dates that exist. */
export function DateField({ label, help, value, put, type = "date", problem, after }: Props) {
  const id = useId();
  return (
    <FieldRow id={id} label={label} help={help} problem={problem} after={after}>
      <input
        id={id}
        className="field-box"
        type={type}
        value={value}
        aria-invalid={problem ? true : undefined}
        aria-describedby={describedBy(id, { help, problem })}
        onChange={(event) => {
          // an empty value is a date half typed: the last whole one stands
          if (event.target.value !== "") put(event.target.value);
        }}
      />
    </FieldRow>
  );
}
