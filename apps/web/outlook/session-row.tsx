import type { HappenedDocument } from "#core/outlook";
import type { Locale } from "#core/words";
import { memo } from "react";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { NumberField, OptionalNumberField } from "../fields/number-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { dateWords } from "../words/dates.ts";

type Session = HappenedDocument["sessions"][number];
type Props = {
  readonly at: number;
  readonly session: Session;
  readonly locale: Locale;
  readonly put: (recipe: (before: HappenedDocument) => HappenedDocument) => void;
  readonly takeAway: (at: number) => void;
};

const PEOPLE = { least: 0, most: 1000, whole: true };

/** One session of the record: its figures side by side, and a way to take it out. */
export const SessionRow = memo(function SessionRow({ at, session, locale, put, takeAway }: Props) {
  const path = `sessions[${at}]`;
  const row = useFormField(path);
  const date = useFormField(`${path}.date`);
  const words = dateWords(session.date, locale);
  const set = (next: Session) =>
    put((before) => ({
      ...before,
      sessions: before.sessions.map((it, other) => (other === at ? next : it)),
    }));
  const optional = (name: "capacity" | "turnedAway" | "newcomers" | "waiting", value: number | undefined) => {
    const { [name]: _, ...others } = session;
    set(value === undefined ? others : { ...others, [name]: value });
  };
  return (
    <li className="session" aria-label={words} data-cancelled={session.cancelled === true || undefined}>
      <DateField
        label="Date"
        value={session.date}
        put={(next) => set({ ...session, date: next })}
        problem={date.problem?.says ?? null}
      />
      <NumberField
        path={`${path}.heads`}
        label="On mats"
        range={PEOPLE}
        value={session.heads}
        put={(heads) => set({ ...session, heads })}
      />
      <OptionalNumberField<undefined>
        path={`${path}.capacity`}
        label="Places then"
        range={{ least: 1, most: 1000, whole: true }}
        none={undefined}
        value={session.capacity}
        put={(capacity) => optional("capacity", capacity)}
      />
      <OptionalNumberField<undefined>
        path={`${path}.turnedAway`}
        label="Turned away"
        range={PEOPLE}
        none={undefined}
        value={session.turnedAway}
        put={(turnedAway) => optional("turnedAway", turnedAway)}
      />
      <OptionalNumberField<undefined>
        path={`${path}.newcomers`}
        label="First time"
        range={PEOPLE}
        none={undefined}
        value={session.newcomers}
        put={(newcomers) => optional("newcomers", newcomers)}
      />
      <OptionalNumberField<undefined>
        path={`${path}.waiting`}
        label={locale === "en-US" ? "Waitlist" : "Waiting list"}
        range={PEOPLE}
        none={undefined}
        value={session.waiting}
        put={(waiting) => optional("waiting", waiting)}
      />
      <TickField
        label="Cancelled"
        checked={session.cancelled ?? false}
        put={(cancelled) => {
          const { cancelled: _, ...others } = session;
          set(cancelled ? { ...others, cancelled } : others);
        }}
      />
      <button
        type="button"
        className="link-button small rows-away"
        aria-label={`Take away ${words}`}
        onClick={() => takeAway(at)}
      >
        Take away
      </button>
      {row.problem === null ? null : (
        <p className="field-problem" role="alert">
          {row.problem.says} {row.problem.next}
        </p>
      )}
    </li>
  );
});
