import type { YearQuestion } from "#app/views";
import type { YearCalendarJson, YearPlan } from "#core/year";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import { today } from "../words/dates.ts";
import type { ChangePlan } from "./plan-form.ts";

type Change = YearPlan["changes"][number];
type Document = YearQuestion["document"];
type Props = {
  readonly plan: YearPlan;
  readonly change: ChangePlan;
  readonly document: Document;
  readonly json: YearCalendarJson | null;
};

const kinds = [
  { value: "move", label: "is moved" },
  { value: "cancel", label: "is cancelled" },
  { value: "extra", label: "is held besides, or all the same" },
];

/** Single sessions moved, cancelled or added. A session that is moved again counts up, so that calendars follow. */
export function ChangeFields({ plan, change, document, json }: Props) {
  const [first] = document.classes;
  const dates = json?.classes.find(({ id }) => id === first?.id)?.dates ?? [];
  const next = dates.find(({ date }) => date >= today())?.date ?? dates[0]?.date ?? document.from;
  if (first === undefined) return null;
  return (
    <Rows<Change>
      title="Single sessions"
      path="changes"
      compact
      rows={plan.changes}
      fresh={() => ({ kind: "cancel", class: first.id, date: next, why: "" })}
      add="Move, cancel or add a session"
      named={(index) => `the change of ${plan.changes[index]?.date ?? index + 1}`}
      put={(changes) => change((before) => ({ ...before, changes: [...changes] }))}
      renderRow={(row, put, path) => <ChangeRow row={row} put={put} path={path} classes={document.classes} />}
    />
  );
}

type RowProps = {
  readonly row: Change;
  readonly put: (row: Change) => void;
  readonly path: string;
  readonly classes: Document["classes"];
};

function ChangeRow({ row, put, path, classes }: RowProps) {
  return (
    <>
      <ChoiceField
        label="Class"
        value={row.class}
        choices={classes.map(({ id, name = id }) => ({ value: id, label: name }))}
        onChange={(id) => put({ ...row, class: id })}
      />
      <DateField label="On" value={row.date} put={(date) => put({ ...row, date })} />
      <ChoiceField label="It" value={row.kind} choices={kinds} onChange={(kind) => put(asKind(row, kind))} />
      <KindFields row={row} put={put} />
      <RowProblem path={`${path}.date`} />
      <RowProblem path={`${path}.class`} />
    </>
  );
}

function KindFields({ row, put }: Pick<RowProps, "row" | "put">) {
  switch (row.kind) {
    case "cancel":
      return <WordsField label="Why" value={row.why} onChange={(why) => put({ ...row, why })} />;
    case "move":
      return (
        <>
          <DateField label="To" value={row.to} put={(to) => put({ ...row, to, times: row.times + 1 })} />
          <StartField row={row} put={(start) => put({ ...row, start, times: row.times + 1 })} />
        </>
      );
    case "extra":
      return <StartField row={row} put={(start) => put({ ...row, start })} />;
  }
}

type StartProps = {
  readonly row: { readonly start?: string | undefined };
  readonly put: (start: string) => void;
};

function StartField({ row, put }: StartProps) {
  return <DateField type="time" label="At, if not as usual" value={row.start ?? ""} put={put} />;
}

function asKind({ class: id, date }: Change, kind: string): Change {
  if (kind === "move") return { kind: "move", class: id, date, to: date, times: 1 };
  return kind === "extra" ? { kind: "extra", class: id, date } : { kind: "cancel", class: id, date, why: "" };
}
