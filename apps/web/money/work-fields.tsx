import type { MoneyPlan } from "#core/cash";
import { weekdayChoices } from "../compare/weekday-choices.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { BandFields } from "./band-fields.tsx";
import { ChangeRows } from "./change-rows.tsx";
import { OffDates } from "./off-dates.tsx";
import { PaidFields } from "./paid-fields.tsx";
import { type ChangePlan, type Work, withDrop, withWork } from "./plan-edit.ts";

type Props = {
  readonly one: Work;
  readonly plan: MoneyPlan;
  readonly change: ChangePlan;
  readonly from: string;
};

const kinds: readonly { readonly value: Work["kind"]; readonly label: string }[] = [
  { value: "studio", label: "Studio" },
  { value: "gym", label: "Gym" },
  { value: "cover", label: "Cover for another teacher" },
  { value: "private", label: "Private" },
  { value: "corporate", label: "For a company" },
  { value: "workshop", label: "Workshops" },
  { value: "own", label: "An own class without a class sheet" },
];

/** The figures of one work: when it is taught, what it pays and when, what it costs, whether it may go. */
export function WorkFields({ one, plan, change, from }: Props) {
  const path = `work.${one.id}`;
  const put = (part: Partial<Work>) => change((before) => withWork(before, one.id, part));
  const { weekly } = one;
  const middle = typeof one.perSession === "string" ? one.perSession : one.perSession.middle;
  return (
    <div>
      <WordsField label="What it is called" value={one.name ?? ""} onChange={(name) => put({ name })} />
      <ChoiceField
        label="What it is"
        value={one.kind}
        choices={kinds}
        onChange={(value) => put({ kind: kinds.find((it) => it.value === value)?.value ?? "studio" })}
      />
      {weekly === undefined ? (
        <p className="soft">It has dates of its own, as its file gave them.</p>
      ) : (
        <>
          <ChoiceField
            label="Day"
            value={String(weekly.weekday)}
            choices={weekdayChoices}
            onChange={(day) => put({ weekly: { ...weekly, weekday: Number(day) } })}
          />
          <DateField
            label="The first session to count"
            help="Also one before the first day that is not paid yet"
            value={weekly.from}
            put={(value) => put({ weekly: { ...weekly, from: value } })}
          />
          <DateField
            label="The last session"
            value={weekly.until}
            put={(value) => put({ weekly: { ...weekly, until: value } })}
          />
          <OffDates weekly={weekly} put={(off) => put({ weekly: { ...weekly, off: [...off] } })} />
        </>
      )}
      <BandFields
        path={`${path}.perSession`}
        label="It pays"
        per="a session"
        value={one.perSession}
        put={(perSession) => put({ perSession })}
      />
      <ChangeRows
        path={`${path}.changes`}
        rows={one.changes}
        from={from}
        middle={middle}
        put={(changes) => put({ changes: [...changes] })}
      />
      <PaidFields
        path={`${path}.paid`}
        label="It is paid"
        value={one.paid ?? { when: "on-the-day", days: 0 }}
        put={(paid) => put({ paid })}
      />
      <MoneyField
        path={`${path}.costs[0].perSession`}
        label="Travel and what else it costs"
        per="a session"
        value={one.costs[0]?.perSession ?? "0"}
        put={(perSession) => put({ costs: [{ name: "travel", perSession, business: true }] })}
      />
      <DropFields one={one} plan={plan} change={change} />
    </div>
  );
}

function DropFields({ one, plan, change }: Omit<Props, "from">) {
  const path = `work.${one.id}.drop`;
  const drop = plan.path?.mayDrop.find((it) => it.id === one.id);
  const usual = { hours: 2.5, noticeWeeks: 4 };
  return (
    <>
      <TickField
        label="It may go as own classes grow"
        checked={drop !== undefined}
        put={(may) => change((before) => withDrop(before, one.id, may ? usual : null))}
      />
      {drop === undefined ? null : (
        <>
          <NumberField
            path={`${path}.hours`}
            label="From door to door"
            unit="hours a session"
            range={{ least: 0, most: 24 }}
            guessable
            value={drop.hours}
            put={(hours) => change((before) => withDrop(before, one.id, { ...drop, hours }))}
          />
          <NumberField
            path={`${path}.noticeWeeks`}
            label="Notice to give"
            unit="weeks"
            range={{ least: 0, most: 52, whole: true }}
            value={drop.noticeWeeks}
            put={(noticeWeeks) => change((before) => withDrop(before, one.id, { ...drop, noticeWeeks }))}
          />
        </>
      )}
    </>
  );
}
