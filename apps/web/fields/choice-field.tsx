import { type ReactNode, useId } from "react";
import { FieldRow } from "./field-row.tsx";

type Props = {
  readonly label: string;
  readonly help?: string;
  readonly value: string;
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly onChange: (value: string) => void;
  readonly after?: ReactNode;
};

/** One of a few: the browser's own list, which phones show well. */
export function ChoiceField({ label, help, value, choices, onChange, after }: Props) {
  const id = useId();
  return (
    <FieldRow id={id} label={label} help={help} after={after}>
      <select
        id={id}
        className="field-box"
        value={value}
        aria-describedby={help === undefined ? undefined : `${id}-help`}
        onChange={(event) => onChange(event.target.value)}
      >
        {choices.map((it) => (
          <option key={it.value} value={it.value}>
            {it.label}
          </option>
        ))}
      </select>
    </FieldRow>
  );
}
