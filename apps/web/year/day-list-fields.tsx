import type { YearCalendarJson, YearPlan } from "#core/year";
import { useState } from "react";
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
      <PastedList
        title={title}
        example={example}
        text={value.text}
        put={(text) => put({ ...value, text })}
        lines={lost.filter((it) => it.place === `${path}.text`)}
      />
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

type PastedProps = {
  readonly title: string;
  readonly example: string;
  readonly text: string;
  readonly put: (text: string) => void;
  readonly lines: LostLines;
};

/**
 * The list as text. What is not understood of it is told when it was pasted or left: a line half typed is no line yet,
 * and nothing below it should move at each key.
 */
function PastedList({ title, example, text, put, lines }: PastedProps) {
  const [typing, setTyping] = useState(false);
  const [told, setTold] = useState(lines);
  if (!typing && told !== lines && !sameLines(told, lines)) setTold(lines);
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- listens to the box inside it
    <div onKeyDown={() => setTyping(true)} onPaste={() => setTyping(false)} onBlur={() => setTyping(false)}>
      <WordsField
        label={`${title}, as a list`}
        help={`A line for each, as you have it: ${example}`}
        value={text}
        onChange={put}
        long
      />
      <LostList lines={told} />
    </div>
  );
}

function sameLines(before: LostLines, now: LostLines): boolean {
  return (
    before.length === now.length &&
    before.every(
      (it, at) => it.line === now[at]?.line && it.text === now[at].text && it.says === now[at].says,
    )
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
