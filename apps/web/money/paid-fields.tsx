import { ChoiceField } from "../fields/choice-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import type { Paid } from "./plan-edit.ts";

type Props = {
  readonly path: string;
  readonly label: string;
  readonly value: Paid;
  readonly put: (value: Paid) => void;
};

const whens: readonly { readonly value: Paid["when"]; readonly label: string }[] = [
  { value: "on-the-day", label: "On the day" },
  { value: "days-after", label: "Days after the session" },
  { value: "after-month", label: "Days after the month's end" },
  { value: "before-month", label: "Days before the month begins" },
];

/** When money for a session really moves. */
export function PaidFields({ path, label, value, put }: Props) {
  return (
    <>
      <ChoiceField
        label={label}
        value={value.when}
        choices={whens}
        onChange={(chosen) => {
          const when = whens.find((it) => it.value === chosen)?.value ?? "on-the-day";
          put({ when, days: when === "on-the-day" ? 0 : value.days });
        }}
      />
      {value.when === "on-the-day" ? null : (
        <NumberField
          path={`${path}.days`}
          label={`${label}: how many days`}
          unit="days"
          range={{ least: 0, most: 366, whole: true }}
          value={value.days}
          put={(days) => put({ ...value, days })}
        />
      )}
    </>
  );
}
