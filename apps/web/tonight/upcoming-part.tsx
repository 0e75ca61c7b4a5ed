import { Link } from "@tanstack/react-router";
import { momentWords } from "#core/notice";
import type { Writer } from "#core/words";
import type { SessionHere } from "../record/lookup.ts";
import { takenWords } from "./tonight-sentence.ts";

type Props = {
  readonly practiceId: string;
  readonly sessions: readonly SessionHere[];
  readonly writer: Writer;
};

/** The sessions of the next fourteen days, with how many mats are taken. */
export function UpcomingPart({ practiceId, sessions, writer }: Props) {
  return (
    <section className="part no-print" aria-labelledby="upcoming">
      <h2 id="upcoming">The next fourteen days</h2>
      {sessions.length === 0 ? <p>No session is in the record for them.</p> : null}
      <ul className="list-plain ledger">
        {sessions.map(({ id, state }) => (
          <li key={id} className="listed">
            <p>
              <Link
                to="/practice/$practice/sessions/$id"
                params={{ practice: practiceId, id }}
                className="reach-link"
              >
                {momentWords(state.starts, state.zone, writer)}
              </Link>
            </p>
            <p className="small">
              {state.name}: {state.cancelled === null ? takenWords(state).join(", ") : "does not take place"}.
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
