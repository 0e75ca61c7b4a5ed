import type { ClassYearJson, YearCalendarJson, YearPlan } from "#core/year";
import type { Locale, PracticeDocument } from "#core/words";
import { useId } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { Show } from "../parts/show.tsx";
import { dateWords, monthWords } from "../words/dates.ts";
import { type ChangePlan, runOf, withRun } from "./plan-form.ts";

type Props = {
  readonly json: YearCalendarJson;
  readonly practice: PracticeDocument;
  readonly plan: YearPlan;
  readonly change: ChangePlan;
};

/** Each class with its days by month, why each missing one is missing, and whether it runs in holidays. */
export function ClassDates({ json, practice, plan, change }: Props) {
  return json.classes.map((one) => (
    <div key={one.id} className="stack-close">
      <h3>
        {one.name}: {countOf(one)}
      </h3>
      <p className="small soft">
        {one.hallName}
        {one.zone === json.zone ? "" : `, by the clocks of ${one.zone}`}
      </p>
      <Months one={one} locale={practice.locale} />
      <Lost one={one} locale={practice.locale} />
      <fieldset className="fields no-print">
        <legend className="small">When {one.name} runs</legend>
        <TickField
          label="On public holidays too"
          checked={runOf(plan, one.id).publicHolidays}
          put={(publicHolidays) => change((before) => withRun(before, one.id, { publicHolidays }))}
        />
        <TickField
          label="In school holidays too"
          checked={runOf(plan, one.id).schoolHolidays}
          put={(schoolHolidays) => change((before) => withRun(before, one.id, { schoolHolidays }))}
        />
      </fieldset>
    </div>
  ));
}

function countOf({ sessions, weeks }: ClassYearJson): string {
  const count = sessions === 1 ? "1 session" : `${sessions} sessions`;
  return sessions === 0 ? "no session" : `${count} in ${weeks === 1 ? "1 week" : `${weeks} weeks`}`;
}

type OneProps = { readonly one: ClassYearJson; readonly locale: Locale };

function Months({ one, locale }: OneProps) {
  const caption = useId();
  if (one.sessions === 0) return null;
  return (
    <table className="year-days" aria-labelledby={caption}>
      <caption id={caption} className="unseen">
        The days of {one.name}
      </caption>
      <tbody>
        {one.months
          .filter(({ sessions }) => sessions > 0)
          .map(({ month }) => (
            <tr key={month}>
              <th scope="row">{monthWords(month, locale)}</th>
              <td>{daysIn(one, month)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}

/** "1, 8, 15 (moved from 14), 22" */
function daysIn({ dates }: ClassYearJson, month: string): string {
  const days = dates.filter(({ date }) => date.startsWith(month));
  const words = days.map(({ date, movedFrom, extra }) => {
    const day = String(Number(date.slice(8)));
    if (movedFrom !== null) return `${day} (moved)`;
    return extra ? `${day} (added)` : day;
  });
  return words.join(", ");
}

function Lost({ one, locale }: OneProps) {
  if (one.lost.length === 0) return <p>Nothing takes a date from it.</p>;
  return (
    <Show
      summary={one.lost.length === 1 ? "Why 1 date is missing" : `Why ${one.lost.length} dates are missing`}
    >
      <ul className="list-plain">
        {one.lost.map(({ date, reasons }) => (
          <li key={date}>
            {dateWords(date, locale)}: {reasons.map(({ why }) => why).join("; ")}
          </li>
        ))}
      </ul>
    </Show>
  );
}
