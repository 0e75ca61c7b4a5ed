import type { YearCalendarJson, YearPlan } from "#core/year";
import { DateField } from "../fields/date-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { RowProblem } from "../week/row-problem.tsx";

type DayList = YearPlan["timeOff"];
type DaysOff = DayList["days"][number];

export type LostLines = YearCalendarJson["notUnderstood"];

type Props = {
  readonly title: string;
  /** where the list stands in the year document: "school", "halls[1].closed" */
  readonly path: string;
  readonly value: DayList;
  readonly put: (value: DayList) => void;
  /** the first day of a new row */
  readonly start: string;
  /** what one of them is, for its buttons: "days off" */
  readonly one: string;
  readonly example: string;
  readonly lost: LostLines;
};

/** Days off one by one, or as a pasted list of which every line that gives none is told. */
export function DayListFields({ title, path, value, put, start, one, example, lost }: Props) {
  return (
    <>
      <Rows<DaysOff>
        title={title}
        path={`${path}.days`}
        compact
        rows={value.days}
        fresh={() => ({ from: start, until: start, why: "" })}
        add={`Add ${one}`}
        named={(index) => `${one} ${value.days[index]?.why || index + 1}`}
        put={(days) => put({ ...value, days: [...days] })}
        renderRow={(row, change, at) => <DaysRow row={row} put={change} path={at} />}
      />
      <WordsField
        label={`${title}, as a list`}
        help={`A line for each, as you have it: ${example}`}
        value={value.text}
        onChange={(text) => put({ ...value, text })}
        long
      />
      <LostList lines={lost.filter((it) => it.place === `${path}.text`)} />
      <RowProblem path={`${path}.text`} />
    </>
  );
}

type RowProps = { readonly row: DaysOff; readonly put: (row: DaysOff) => void; readonly path: string };

/** From a day until another, and why; problems stand below the row. */
export function DaysRow({ row, put, path }: RowProps) {
  return (
    <>
      <WordsField label="Why" value={row.why} onChange={(why) => put({ ...row, why })} />
      <DateField label="First day" value={row.from} put={(from) => put({ ...row, from })} />
      <DateField label="Last day" value={row.until ?? row.from} put={(until) => put({ ...row, until })} />
      <RowProblem path={`${path}.from`} />
      <RowProblem path={`${path}.until`} />
    </>
  );
}

function LostList({ lines }: { readonly lines: LostLines }) {
  return (
    <output>
      {lines.map(({ line, text, says }) => (
        <p key={line} className="field-problem">
          Line {line}, “{text}”, is not understood: {says}
        </p>
      ))}
    </output>
  );
}
