import type { WeekPlan } from "#core/week";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { MINUTES, NumberField, OptionalNumberField } from "../fields/number-field.tsx";
import { type ChangePlan } from "./plan-edit.ts";

type Props = { readonly plan: WeekPlan; readonly change: ChangePlan };
type Limits = WeekPlan["limits"];

const counts: readonly {
  readonly key: "classesAWeek" | "classesADay" | "backToBack" | "evenings";
  readonly label: string;
  readonly most: number;
}[] = [
  { key: "classesAWeek", label: "Classes a week at most", most: 100 },
  { key: "classesADay", label: "Classes a day at most", most: 20 },
  { key: "backToBack", label: "Classes in a row without a break at most", most: 20 },
  { key: "evenings", label: "Evenings a week at most", most: 7 },
];

/** What she can keep up: her own limits, each of which may be empty for none. */
export function LimitFields({ plan, change }: Props) {
  const { limits } = plan;
  const evening = useFormField("limits.eveningFrom");
  const put = (part: Partial<Limits>) =>
    change((before) => ({ ...before, limits: { ...before.limits, ...part } }));
  return (
    <fieldset className="fields">
      <legend>Your limits</legend>
      <p className="small soft">
        Those that stand here at first are common practice; your voice, your body and a doctor know better. An
        empty box is no limit.
      </p>
      {counts.map(({ key, label, most }) => (
        <OptionalNumberField<null>
          key={key}
          path={`limits.${key}`}
          label={label}
          range={{ least: 0, most, whole: true }}
          none={null}
          value={limits[key]}
          put={(value) => put({ [key]: value })}
        />
      ))}
      <DateField
        type="time"
        label="An evening begins"
        help="A class that ends later makes an evening"
        value={limits.eveningFrom}
        put={(eveningFrom) => put({ eveningFrom })}
        problem={evening.problem === null ? null : `${evening.problem.says} ${evening.problem.next}`}
      />
      <NumberField
        path="limits.freeDays"
        label="Days without a class at least"
        range={{ least: 0, most: 6, whole: true }}
        value={limits.freeDays}
        put={(freeDays) => put({ freeDays })}
      />
      <NumberField
        path="limits.restHours"
        label="Rest at home from one day to the next"
        unit="hours"
        range={{ least: 0, most: 23 }}
        value={limits.restHours}
        put={(restHours) => put({ restHours })}
      />
      <NumberField
        path="limits.breakMinutes"
        label="Free minutes that make a break"
        unit="minutes"
        range={MINUTES}
        value={limits.breakMinutes}
        put={(breakMinutes) => put({ breakMinutes })}
      />
      <NumberField
        path="limits.buffer"
        label="To spare on each way between two places"
        unit="minutes"
        range={MINUTES}
        value={limits.buffer}
        put={(buffer) => put({ buffer })}
      />
      <NumberField
        path="homeBetween"
        label="You go home between two classes from"
        unit="min at home"
        range={MINUTES}
        value={plan.homeBetween}
        put={(homeBetween) => change((before) => ({ ...before, homeBetween }))}
      />
    </fieldset>
  );
}
