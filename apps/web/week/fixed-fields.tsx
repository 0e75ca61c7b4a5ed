import type { WeekPlan } from "#core/week";
import { weekdayChoices } from "../compare/weekday-choices.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { type ChangePlan } from "./plan-edit.ts";
import { RowProblem } from "./row-problem.tsx";

type Fixed = WeekPlan["commitments"][number];
type Props = { readonly plan: WeekPlan; readonly change: ChangePlan };

/** What is fixed besides teaching: no class and no way to one falls into it. */
export function FixedFields({ plan, change }: Props) {
  const { commitments } = plan;
  return (
    <Rows<Fixed>
      title="When you are not free"
      path="commitments"
      compact
      before={
        <p className="small soft">
          Other work, school runs, a course: with the ways there and back. You are at home from its beginning
          to its end.
        </p>
      }
      rows={commitments}
      fresh={() => ({ name: "", weekday: 3, from: "15:00", until: "16:00" })}
      add="Add a time when you are not free"
      named={(index) => `the time ${commitments[index]?.name || index + 1}`}
      put={(rows) => change((before) => ({ ...before, commitments: [...rows] }))}
      renderRow={(one, put, path) => <FixedRow one={one} put={put} path={path} />}
    />
  );
}

type RowProps = {
  readonly one: Fixed;
  readonly put: (one: Fixed) => void;
  readonly path: string;
};

function FixedRow({ one, put, path }: RowProps) {
  const until = useFormField(`${path}.until`);
  return (
    <>
      <WordsField label="What" value={one.name ?? ""} onChange={(name) => put({ ...one, name })} />
      <ChoiceField
        label="Day"
        value={String(one.weekday)}
        choices={weekdayChoices}
        onChange={(day) => put({ ...one, weekday: Number(day) })}
      />
      <DateField type="time" label="From" value={one.from} put={(from) => put({ ...one, from })} />
      <DateField
        type="time"
        label="Until"
        value={one.until}
        put={(next) => put({ ...one, until: next })}
        problem={until.problem === null ? null : `${until.problem.says} ${until.problem.next}`}
      />
      <RowProblem path={path} />
    </>
  );
}
