import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { MINUTES, NumberField } from "../fields/number-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { weekdayChoices } from "../compare/weekday-choices.ts";
import { type ChangePlan, type Other, withOther } from "./plan-edit.ts";

type Props = {
  readonly one: Other;
  readonly change: ChangePlan;
  readonly places: readonly { readonly value: string; readonly label: string }[];
};

const kinds: readonly { readonly value: Other["kind"]; readonly label: string }[] = [
  { value: "studio", label: "Studio" },
  { value: "gym", label: "Gym" },
  { value: "cover", label: "Cover for another teacher" },
  { value: "private", label: "Private" },
  { value: "corporate", label: "For a company" },
  { value: "own", label: "An own class, not begun yet" },
];

const standings = [
  { value: "may", label: "when it pays" },
  { value: "fixed", label: "promised" },
  { value: "out", label: "left out" },
];

/** The figures of one class for others. */
export function OtherFields({ one, change, places }: Props) {
  const path = `candidates.${one.id}`;
  const start = useFormField(`${path}.start`);
  const put = (part: Partial<Other>) => change((before) => withOther(before, one.id, part));
  const minutes = (name: keyof Other["minutes"]) => (value: number) =>
    put({ minutes: { ...one.minutes, [name]: value } });
  const standing = one.out ? "out" : one.fixed ? "fixed" : "may";
  const known = places.some(({ value }) => value === one.place);
  return (
    <div>
      <WordsField label="What it is called" value={one.name ?? ""} onChange={(name) => put({ name })} />
      <ChoiceField
        label="What it is"
        value={one.kind}
        choices={kinds}
        onChange={(value) => put({ kind: kinds.find((it) => it.value === value)?.value ?? "studio" })}
      />
      <ChoiceField
        label="Place"
        help="Places are added below"
        value={one.place}
        choices={known ? places : [{ value: one.place, label: "A place that is gone" }, ...places]}
        onChange={(place) => put({ place })}
      />
      <ChoiceField
        label="Day"
        value={String(one.weekday)}
        choices={weekdayChoices}
        onChange={(day) => put({ weekday: Number(day) })}
      />
      <DateField
        type="time"
        label="Begins"
        value={one.start}
        put={(value) => put({ start: value })}
        problem={start.problem === null ? null : `${start.problem.says} ${start.problem.next}`}
      />
      <NumberField
        path={`${path}.minutes.teach`}
        label="Minutes of the class"
        unit="minutes"
        range={{ least: 1, most: 1440, whole: true }}
        value={one.minutes.teach}
        put={minutes("teach")}
      />
      <MoneyField
        path={`${path}.contribution`}
        label="It pays, before travel"
        help="Less what it costs you there"
        per="a session"
        guessable
        value={one.contribution}
        put={(contribution) => put({ contribution })}
      />
      <NumberField
        path={`${path}.sessions`}
        label="Sessions a year"
        help="For cover, as many as are likely"
        range={{ least: 1, most: 53, whole: true }}
        guessable
        value={one.sessions}
        put={(sessions) => put({ sessions })}
      />
      <NumberField
        path={`${path}.minutes.before`}
        label="There before it begins"
        unit="minutes"
        range={MINUTES}
        value={one.minutes.before}
        put={minutes("before")}
      />
      <NumberField
        path={`${path}.minutes.after`}
        label="There after it ends"
        unit="minutes"
        range={MINUTES}
        value={one.minutes.after}
        put={minutes("after")}
      />
      <NumberField
        path={`${path}.minutes.preparation`}
        label="Preparation at home for each session"
        unit="minutes"
        range={MINUTES}
        value={one.minutes.preparation}
        put={minutes("preparation")}
      />
      <ChoiceField
        label="In the week"
        value={standing}
        choices={standings}
        onChange={(value) => put({ out: value === "out", fixed: value === "fixed" })}
      />
    </div>
  );
}
