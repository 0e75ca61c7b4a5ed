import type { OwnClassRow } from "#app/views";
import type { WeekPlan } from "#core/week";
import { Link } from "@tanstack/react-router";
import { ChoiceField } from "../fields/choice-field.tsx";
import { OptionalMoneyField } from "../fields/money-field.tsx";
import { OptionalNumberField } from "../fields/number-field.tsx";
import { Show } from "../parts/show.tsx";
import { type ChangePlan, ownOf, withOwn } from "./plan-edit.ts";
import { RowProblem } from "./row-problem.tsx";

type Props = {
  readonly practiceId: string;
  readonly rows: readonly OwnClassRow[];
  readonly plan: WeekPlan;
  readonly change: ChangePlan;
};

/** The classes of the practice, which come into the week by themselves. */
export function OwnList({ practiceId, rows, plan, change }: Props) {
  return (
    <fieldset className="fields">
      <legend>Your own classes</legend>
      {rows.length === 0 ? (
        <p className="soft">There is none yet: a class that you begin comes in by itself.</p>
      ) : null}
      <ul className="list-plain">
        {rows.map((row) => (
          <li key={row.id} className="rows-one">
            <OwnRow practiceId={practiceId} row={row} plan={plan} change={change} />
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

const choices = [
  { value: "may", label: "when it pays" },
  { value: "fixed", label: "promised" },
  { value: "out", label: "left out" },
];

function OwnRow({ practiceId, row, plan, change }: Omit<Props, "rows"> & { readonly row: OwnClassRow }) {
  const said = ownOf(plan, row.id);
  const path = `own.${row.id}`;
  const put = (part: Parameters<typeof withOwn>[2]) => change((before) => withOwn(before, row.id, part));
  return (
    <>
      <p>
        <strong>{row.name}</strong> <span className="soft">{row.says}</span>
        {row.guesses === 0 ? null : (
          <span className="soft">
            ; rests on {row.guesses === 1 ? "1 guess" : `${row.guesses} guesses`} of its class sheet
          </span>
        )}
      </p>
      {row.why === null ? null : <p className="problem-note">Not in the week: {row.why}</p>}
      <RowProblem path={path} />
      <RowProblem path={`${path}.start`} />
      <ChoiceField
        label={`${row.name}: in the week`}
        value={said.out ? "out" : said.fixed ? "fixed" : "may"}
        choices={choices}
        onChange={(value) => put({ out: value === "out", fixed: value === "fixed" })}
      />
      <Show summary="Other figures than its class sheet has">
        <OptionalMoneyField
          path={`${path}.contribution`}
          label={`${row.name}: a session leaves before travel`}
          help={
            row.contribution === null
              ? "After hall and other costs; travel is counted by the way of the day"
              : `Empty takes ${row.contribution} from its class sheet: after hall and other costs, before travel and fixed costs`
          }
          per="a session"
          value={said.contribution}
          put={(contribution) => put({ contribution })}
        />
        <OptionalNumberField<undefined>
          path={`${path}.sessions`}
          label={`${row.name}: sessions a year`}
          help={row.sessions === null ? "From 1 to 53" : `Empty takes ${row.sessions} from its class sheet`}
          range={{ least: 1, most: 53, whole: true }}
          none={undefined}
          value={said.sessions}
          put={(sessions) => put({ sessions })}
        />
      </Show>
      <p>
        <Link to="/practice/$practice/classes/$id" params={{ practice: practiceId, id: row.id }}>
          Class sheet of {row.name}
        </Link>
      </p>
    </>
  );
}
