import { useId } from "react";

type Props<Value extends string> = {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly put: (value: Value) => void;
};

/** One of a few, each as large as a thumb. */
export function BigChoice<Value extends string>({ label, value, choices, put }: Props<Value>) {
  const name = useId();
  return (
    <fieldset className="fields">
      <legend>{label}</legend>
      <div className="big-choices">
        {choices.map((it) => (
          <label key={it.value} className="big-choice">
            <input
              type="radio"
              name={name}
              value={it.value}
              checked={it.value === value}
              onChange={() => put(it.value)}
            />
            <span>{it.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
