import { travelTo } from "#app/views";
import type { HallForClass } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { ClassPart } from "../class-sheet/class-part.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { MINUTES, NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { Show } from "../parts/show.tsx";
import { weekdayName } from "../words/dates.ts";
import { weekdayChoices } from "./weekday-choices.ts";

type Props = ClassPart & { readonly hall: Listed<HallDocument>; readonly name: string };

/** What getting to one hall takes, and when it can be had. */
export function HallFields({ document, change, hall, name }: Props) {
  const { planning } = document;
  const planned = planning?.halls?.[hall.id] ?? {};
  const path = `planning.halls.${hall.id}`;
  const put = (part: HallForClass) =>
    change({ planning: { ...planning, halls: { ...planning?.halls, [hall.id]: { ...planned, ...part } } } });
  const { travelMinutes, travelCost } = travelTo(document, hall.id);
  const stated = planned.travelMinutes !== undefined || document.hall === hall.id;
  return (
    <Show summary={`${name} – the way there and when it can be had`}>
      <div>
        <NumberField
          path={`${path}.travelMinutes`}
          label="Travel there and back"
          {...(stated ? {} : { help: "Not stated: as to the hall of the class, a guess" })}
          unit="minutes"
          range={MINUTES}
          value={travelMinutes}
          put={(minutes) => put({ travelMinutes: minutes })}
        />
        <MoneyField
          path={`${path}.travelCost`}
          label="What that costs"
          per="a session"
          value={travelCost}
          put={(cost) => put({ travelCost: cost })}
        />
        <FreeRows document={document} planned={planned} path={path} put={put} />
        <TermRows document={document} planned={planned} path={path} put={put} />
        <ClosedRows document={document} planned={planned} path={path} put={put} />
      </div>
    </Show>
  );
}

type RowsProps = Pick<ClassPart, "document"> & {
  readonly planned: HallForClass;
  readonly path: string;
  readonly put: (part: HallForClass) => void;
};

/** When the hall is free, from letting in to locking up; no rows is taken to be free. */
function FreeRows({ document, planned, path, put }: RowsProps) {
  const free = planned.free ?? [];
  return (
    <Rows
      title="When it is free"
      path={`${path}.free`}
      compact
      rows={free}
      fresh={() => ({ weekday: document.weekday, from: "18:00", until: "22:00" })}
      add="Add free hours"
      named={(index) => `the free hours of ${weekdayName(free[index]?.weekday ?? 1)}`}
      put={(rows) => put({ free: [...rows] })}
      renderRow={(span, putSpan) => (
        <>
          <ChoiceField
            label="Day"
            value={String(span.weekday)}
            choices={weekdayChoices}
            onChange={(day) => putSpan({ ...span, weekday: Number(day) })}
          />
          <DateField type="time" label="From" value={span.from} put={(from) => putSpan({ ...span, from })} />
          <DateField
            type="time"
            label="Until"
            value={span.until}
            put={(until) => putSpan({ ...span, until })}
            problem={span.until <= span.from ? "It is before the first time. Put the later time here." : null}
          />
        </>
      )}
    />
  );
}

/** Between which dates the hall can be had; no rows is all year. */
function TermRows({ document, planned, path, put }: RowsProps) {
  const terms = planned.terms ?? [];
  const { from, until } = document.year;
  return (
    <Rows
      title="Only between these dates"
      path={`${path}.terms`}
      compact
      rows={terms}
      fresh={() => ({ from, until })}
      add="Add a term"
      named={(index) => `the term ${index + 1}`}
      put={(rows) => put({ terms: [...rows] })}
      renderRow={(term, putTerm) => (
        <>
          <DateField label="From" value={term.from} put={(day) => putTerm({ ...term, from: day })} />
          <DateField
            label="Until"
            value={term.until}
            put={(day) => putTerm({ ...term, until: day })}
            problem={term.until < term.from ? "It is before the first day. Put the later date here." : null}
          />
        </>
      )}
    />
  );
}

/** Days on which this hall alone is closed; the days without class are counted already. */
function ClosedRows({ document, planned, path, put }: RowsProps) {
  const closures = planned.closures ?? [];
  const { from: day } = document.year;
  return (
    <Rows
      title="When this hall is closed besides"
      path={`${path}.closures`}
      compact
      rows={closures}
      fresh={() => ({ from: day, until: day, why: "" })}
      add="Add closed days"
      named={(index) => closures[index]?.why || "these days"}
      put={(rows) => put({ closures: [...rows] })}
      renderRow={(closure, putClosure) => (
        <>
          <WordsField label="Why" value={closure.why} onChange={(why) => putClosure({ ...closure, why })} />
          <DateField
            label="First day"
            value={closure.from}
            put={(from) => putClosure({ ...closure, from })}
          />
          <DateField
            label="Last day"
            value={closure.until}
            put={(until) => putClosure({ ...closure, until })}
            problem={
              closure.until < closure.from ? "It is before the first day. Put the later date here." : null
            }
          />
        </>
      )}
    />
  );
}
