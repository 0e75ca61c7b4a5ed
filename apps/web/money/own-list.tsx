import type { OwnMoneyRow } from "#app/views";
import type { MoneyPlan } from "#core/cash";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { Link } from "@tanstack/react-router";
import type { Listed } from "../drafts/use-practice.ts";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { Show } from "../parts/show.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import { BandFields } from "./band-fields.tsx";
import { ChangeRows } from "./change-rows.tsx";
import { GrowthOffer } from "./growth-offer.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import { PaidFields } from "./paid-fields.tsx";
import { type ChangePlan, type Own, ownOf, withOwn } from "./plan-edit.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly rows: readonly OwnMoneyRow[];
  readonly plan: MoneyPlan;
  readonly change: ChangePlan;
  readonly from: string;
  readonly words: MoneyWords;
};

/** The classes of the practice, which come in by themselves. */
export function OwnList({ rows, ...rest }: Props) {
  return (
    <fieldset className="fields">
      <legend>Your own classes</legend>
      {rows.length === 0 ? (
        <p className="soft">There is none yet: a class that you begin comes in by itself.</p>
      ) : null}
      <ul className="list-plain">
        {rows.map((row) => (
          <li key={row.id} className="rows-one">
            <OwnRow row={row} {...rest} />
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

type RowProps = Omit<Props, "rows"> & { readonly row: OwnMoneyRow };

function OwnRow(props: RowProps) {
  const { practiceId, practice, classes, halls, row, plan, change, from, words } = props;
  const document = classes.find(({ id }) => id === row.id)?.document;
  const hall = halls.find(({ id }) => id === document?.hall)?.document ?? null;
  const said = ownOf(plan, row.id);
  const put = (recipe: (before: Own) => Own) => change((before) => withOwn(before, row.id, recipe));
  return (
    <>
      <p>
        <strong>{row.name}</strong> <span className="soft">{row.says}</span>
      </p>
      {row.why === null ? null : <p className="problem-note">Not counted: {row.why}</p>}
      <RowProblem path={`own.${row.id}`} />
      <TickField
        label={`Count ${row.name}`}
        checked={!said.out}
        put={(counted) => put((before) => ({ ...before, out: !counted }))}
      />
      {row.figures === null ? null : (
        <Show summary="Takings as it grows, passes, and when the hall is paid">
          {document === undefined ? null : (
            <GrowthOffer
              practiceId={practiceId}
              practice={practice}
              id={row.id}
              name={row.name}
              document={document}
              hall={hall}
              words={words}
              put={(changes) => put((before) => ({ ...before, changes }))}
            />
          )}
          <OwnFields row={row} said={said} put={put} from={from} />
        </Show>
      )}
      <p>
        <Link to="/practice/$practice/classes/$id" params={{ practice: practiceId, id: row.id }}>
          Class sheet of {row.name}
        </Link>
      </p>
    </>
  );
}

type FieldsProps = {
  readonly row: OwnMoneyRow;
  readonly said: Own;
  readonly put: (recipe: (before: Own) => Own) => void;
  readonly from: string;
};

function OwnFields({ row: { id, figures }, said, put, from }: FieldsProps) {
  const path = `own.${id}`;
  if (figures === null) return null;
  const { low, middle, high } = figures.takings;
  const sheet = low === high ? middle : figures.takings;
  const passes = said.passes ?? { share: 0, sessions: 10, ...figures.passes, owed: "0" };
  const putPasses = (part: Partial<typeof passes>) =>
    put((before) => ({ ...before, passes: { ...passes, ...part } }));
  return (
    <>
      <BandFields
        path={`${path}.perSession`}
        label="Takings of a session"
        help={
          said.perSession === undefined
            ? "From its class sheet until you change it"
            : "In place of its class sheet"
        }
        per="a session"
        guessable={said.perSession !== undefined}
        value={said.perSession ?? sheet}
        put={(perSession) => put((before) => ({ ...before, perSession }))}
      />
      {said.perSession === undefined ? null : (
        <button
          type="button"
          className="link-button small"
          onClick={() => put((before) => ({ ...before, perSession: undefined }))}
        >
          Take the takings from its class sheet again
        </button>
      )}
      <ChangeRows
        path={`${path}.changes`}
        rows={said.changes}
        from={from}
        middle={middle}
        put={(changes) => put((before) => ({ ...before, changes: [...changes] }))}
      />
      <PercentField
        path={`${path}.passes.share`}
        label="Of the takings that passes and blocks have paid"
        guessable
        value={passes.share}
        put={(share) => putPasses({ share })}
      />
      <NumberField
        path={`${path}.passes.sessions`}
        label="They are sold for so many sessions at a time"
        unit="sessions"
        range={{ least: 1, most: 100, whole: true }}
        value={passes.sessions}
        put={(sessions) => putPasses({ sessions })}
      />
      <MoneyField
        path={`${path}.passes.owed`}
        label="Sold before the first day and not yet taught"
        value={passes.owed}
        put={(owed) => putPasses({ owed })}
      />
      <PaidFields
        path={`${path}.costs[0].paid`}
        label="The hall is paid"
        value={said.hallPaid ?? { when: "after-month", days: 14 }}
        put={(hallPaid) => put((before) => ({ ...before, hallPaid }))}
      />
    </>
  );
}
