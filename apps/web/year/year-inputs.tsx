import type { YearQuestion } from "#app/views";
import type { Region, YearCalendarJson, YearPlan } from "#core/year";
import type { PracticeDocument } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { Show } from "../parts/show.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import { ChangeFields } from "./change-fields.tsx";
import { DayListFields, DaysRow } from "./day-list-fields.tsx";
import { HallFields } from "./hall-fields.tsx";
import type { ChangePlan } from "./plan-form.ts";
import { SchoolCalendar } from "./school-calendar.tsx";

type Props = {
  readonly practice: PracticeDocument;
  readonly plan: YearPlan;
  readonly change: ChangePlan;
  readonly question: YearQuestion;
  /** the answer, for the lines that are not understood and the dates there are; null before the first */
  readonly json: YearCalendarJson | null;
};

/** All that the year rests on, apart from the class sheets. */
export function YearInputs({ practice, plan, change, question, json }: Props) {
  const lost = json?.notUnderstood ?? [];
  const { document } = question;
  const american = practice.locale === "en-US";
  const example = american ? "Spring break: March 22–26, 2027" : "Half-term: 26 to 30 October 2026";
  const common = { start: document.from, example, lost };
  return (
    <section className="part no-print year-inputs" aria-labelledby="rests">
      <h2 id="rests" className="part-title">
        What it rests on
      </h2>
      <SpanFields plan={plan} change={change} document={document} />
      <HolidayFields plan={plan} change={change} start={document.from} />
      <DayListFields
        {...common}
        title="Your time off"
        path="timeOff"
        one="time off"
        value={plan.timeOff}
        put={(timeOff) => change((before) => ({ ...before, timeOff }))}
      />
      <DayListFields
        {...common}
        title="School holidays"
        path="school"
        one="school holidays"
        value={plan.school}
        put={(school) => change((before) => ({ ...before, school }))}
      />
      <SchoolCalendar
        document={document}
        put={(days) =>
          change((before) => ({
            ...before,
            school: { ...before.school, days: [...before.school.days, ...days] },
          }))
        }
      />
      <p className="small soft">
        A class runs in school holidays unless you say otherwise beside its dates. Public holidays take it
        unless you say otherwise there.
      </p>
      <PercentField
        path="sick.share"
        label="Sessions that you may lose by being ill"
        help="A guess: it is told beside the sessions and takes none of them away."
        value={plan.sick.share}
        put={(share) => change((before) => ({ ...before, sick: { share } }))}
      />
      <h3>The halls</h3>
      {document.halls?.map(({ id, name = id }, at) => (
        <HallFields
          key={id}
          id={id}
          name={name}
          path={`halls[${at}]`}
          plan={plan}
          change={change}
          document={document}
          {...common}
        />
      ))}
      <ElectionFields plan={plan} change={change} start={document.from} />
      <div className="year-changes">
        <ChangeFields plan={plan} change={change} document={document} json={json} />
      </div>
    </section>
  );
}

type PartProps = { readonly plan: YearPlan; readonly change: ChangePlan };

function SpanFields({ change, document }: PartProps & { readonly document: YearQuestion["document"] }) {
  const until = useFormField("until");
  return (
    <fieldset className="fields">
      <legend>The year</legend>
      <DateField
        label="First day"
        help="As your classes begin and end, until you choose days of your own."
        value={document.from}
        put={(from) => change((before) => ({ ...before, from }))}
      />
      <DateField
        label="Last day"
        value={document.until}
        put={(last) => change((before) => ({ ...before, until: last }))}
        problem={until.problem === null ? null : `${until.problem.says} ${until.problem.next}`}
      />
    </fieldset>
  );
}

const regionNames: Readonly<Record<Region, string>> = {
  "GB-ENG": "England",
  "GB-WLS": "Wales",
  "GB-SCT": "Scotland",
  "GB-NIR": "Northern Ireland",
  US: "United States, federal",
  "US-IL": "Illinois",
  none: "none",
};
const choices = Object.entries(regionNames).map(([value, label]) => ({ value, label }));

function HolidayFields({ plan, change, start }: PartProps & { readonly start: string }) {
  const { holidays } = plan;
  const put = (part: Partial<YearPlan["holidays"]>) =>
    change((before) => ({ ...before, holidays: { ...before.holidays, ...part } }));
  return (
    <>
      <fieldset className="fields">
        <legend>Public holidays</legend>
        <ChoiceField
          label="As they are kept in"
          value={holidays.region}
          choices={choices}
          onChange={(region) => put({ region: regionOf(region) })}
        />
      </fieldset>
      <Show summary="Days that count as holidays besides, or do not count">
        <Rows
          title="Days that count besides"
          path="holidays.also"
          compact
          rows={holidays.also}
          fresh={() => ({ from: start, until: start, why: "" })}
          add="Add a holiday"
          named={(index) => `holiday ${holidays.also[index]?.why || index + 1}`}
          put={(also) => put({ also: [...also] })}
          renderRow={(row, changeRow, path) => <DaysRow row={row} put={changeRow} path={path} />}
        />
        <DateRows
          title="Public holidays that count for nothing here"
          path="holidays.not"
          add="Add a day"
          start={start}
          days={holidays.not}
          put={(not) => put({ not: [...not] })}
        />
      </Show>
    </>
  );
}

function regionOf(text: string): Region {
  const found = Object.keys(regionNames).find((it): it is Region => it === text);
  return found ?? "none";
}

function ElectionFields({ plan, change, start }: PartProps & { readonly start: string }) {
  return (
    <DateRows
      title="Days of elections"
      path="elections"
      add="Add an election"
      start={start}
      days={plan.elections}
      put={(elections) => change((before) => ({ ...before, elections: [...elections] }))}
    />
  );
}

type DateRowsProps = {
  readonly title: string;
  readonly path: string;
  readonly add: string;
  readonly start: string;
  readonly days: readonly string[];
  readonly put: (days: readonly string[]) => void;
};

function DateRows({ title, path, add, start, days, put }: DateRowsProps) {
  return (
    <Rows<string>
      title={title}
      path={path}
      compact
      rows={days}
      fresh={() => start}
      add={add}
      named={(index) => `day ${index + 1}`}
      put={put}
      renderRow={(day, change, at) => (
        <>
          <DateField label="Day" value={day} put={change} />
          <RowProblem path={at} />
        </>
      )}
    />
  );
}
