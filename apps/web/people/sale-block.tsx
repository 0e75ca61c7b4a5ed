import { useQuery } from "@tanstack/react-query";
import { freeMats } from "#core/roll";
import { ChoiceField } from "../fields/choice-field.tsx";
import { dateWords } from "../words/dates.ts";
import { NotRead } from "./not-read.tsx";
import { type SessionHere, sessionsQuery } from "./record-reads.ts";
import type { SalePart } from "./sale-fields.tsx";
import { weeksBefore } from "./today-here.ts";

/** Dates ahead that are offered for a block: a year of them. */
const WEEKS = 52;

/** The class of a block and the dates in it; a date without a free mat cannot be chosen. */
export function SaleBlock({ draft, put, classes, at, today }: SalePart) {
  const sessions = useQuery(sessionsQuery(at.practiceId, today, weeksBefore(today, -WEEKS)));
  const ahead = (sessions.data ?? []).filter(
    ({ session }) => session.class === draft.class && session.cancelled === null && session.date >= today,
  );
  const choose = (chosen: readonly string[]) => {
    const dates = ahead.filter(({ id }) => chosen.includes(id));
    const inOrder = dates.map(({ id }) => id);
    put({ ...draft, sessions: inOrder, size: chosen.length, useBy: dates.at(-1)?.session.date ?? null });
  };
  return (
    <div className="measure holds-fields stack-close">
      <ChoiceField
        label="Of which class"
        value={draft.class}
        choices={classes.map(({ id, document }) => ({ value: id, label: document.name }))}
        onChange={(value) => put({ ...draft, class: value, sessions: [], size: 0, useBy: null })}
      />
      {sessions.isError ? <NotRead error={sessions.error} again={sessions.refetch} /> : null}
      {sessions.data !== undefined && ahead.length === 0 ? (
        <p>
          No date of this class ahead is in the record yet. Put its dates into the record from the sheet of
          the class first.
        </p>
      ) : null}
      <fieldset className="fields">
        <legend>Which dates</legend>
        {ahead.map((it) => (
          <DateChoice
            key={it.id}
            it={it}
            words={dateWords(it.session.date, at.practice.locale)}
            chosen={draft.sessions.includes(it.id)}
            put={(on) =>
              choose(on ? [...draft.sessions, it.id] : draft.sessions.filter((other) => other !== it.id))
            }
          />
        ))}
      </fieldset>
      <p>
        {draft.sessions.length === 0
          ? "Choose at least one date."
          : `${draft.sessions.length === 1 ? "1 date is" : `${draft.sessions.length} dates are`} chosen. A mat on each is held at once.`}
      </p>
    </div>
  );
}

type ChoiceProps = {
  readonly it: SessionHere;
  readonly words: string;
  readonly chosen: boolean;
  readonly put: (on: boolean) => void;
};

function DateChoice({ it: { session }, words, chosen, put }: ChoiceProps) {
  const free = freeMats(session);
  return (
    <label className="choice">
      <input
        type="checkbox"
        checked={chosen}
        disabled={free < 1}
        onChange={(event) => put(event.target.checked)}
      />
      {words}
      <span className="small soft">
        {free < 1 ? "full" : free === 1 ? "1 mat free" : `${free} mats free`}
      </span>
    </label>
  );
}
