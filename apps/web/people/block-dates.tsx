import { useQuery } from "@tanstack/react-query";
import { dateWords } from "../words/dates.ts";
import type { PassAt } from "./pass-item.tsx";
import { sessionsQuery } from "./record-reads.ts";
import { TickField } from "../fields/tick-field.tsx";
import { weeksBefore } from "./today-here.ts";

type Props = {
  readonly it: PassAt;
  readonly chosen: readonly string[];
  readonly put: (sessions: readonly string[]) => void;
};

/** A year either way: a block that is given back was sold within it. */
const WEEKS = 52;

/** The sessions of a block that can still be given back, to be chosen by their dates. */
export function BlockDates({ it: { pass, at, today }, chosen, put }: Props) {
  const { practiceId, practice } = at;
  const around = sessionsQuery(practiceId, weeksBefore(today, WEEKS), weeksBefore(today, -WEEKS));
  const sessions = useQuery(around);
  const taken = new Set([...pass.used, ...pass.promised].map(({ session }) => session));
  const free = pass.sessions.filter((session) => !taken.has(session));
  const dates = new Map(sessions.data?.map(({ id, session }) => [id, session.date]));
  return (
    <fieldset className="fields">
      <legend>Which sessions are given back</legend>
      {free.map((session) => {
        const date = dates.get(session);
        return (
          <div key={session}>
            <TickField
              label={date === undefined ? session : dateWords(date, practice.locale)}
              checked={chosen.includes(session)}
              put={(on) => put(on ? [...chosen, session] : chosen.filter((other) => other !== session))}
            />
          </div>
        );
      })}
    </fieldset>
  );
}
