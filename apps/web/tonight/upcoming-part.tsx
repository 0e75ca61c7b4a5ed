import { Link } from "@tanstack/react-router";
import { momentWords } from "#core/notice";
import type { SessionState } from "#core/roll";
import type { Writer } from "#core/words";
import { Show } from "../parts/show.tsx";
import type { SessionHere } from "../record/lookup.ts";
import { lately, upcoming } from "./pick-tonight.ts";
import { markedSentence, takenWords } from "./tonight-sentence.ts";

type Props = {
  readonly practiceId: string;
  readonly sessions: readonly SessionHere[];
  /** the one whose register stands above */
  readonly above: string | undefined;
  readonly now: string;
  readonly writer: Writer;
};

/** The sessions of the next fourteen days with how many mats are taken, and the registers of the last fourteen. */
export function UpcomingPart({ practiceId, sessions, above, now, writer }: Props) {
  const others = sessions.filter(({ id }) => id !== above);
  const ahead = upcoming(others, now);
  const past = lately(others, now);
  return (
    <section className="part no-print" aria-labelledby="upcoming">
      <h2 id="upcoming">The next fourteen days</h2>
      {ahead.length === 0 ? <p>No other session is in the record for them.</p> : null}
      <Listed practiceId={practiceId} sessions={ahead} words={aheadWords} writer={writer} />
      {past.length === 0 ? null : (
        <Show summary="The last fourteen days">
          <Listed practiceId={practiceId} sessions={past} words={pastWords} writer={writer} />
        </Show>
      )}
    </section>
  );
}

type ListedProps = Pick<Props, "practiceId" | "sessions" | "writer"> & {
  readonly words: (state: SessionState) => string;
};

function Listed({ practiceId, sessions, words, writer }: ListedProps) {
  return (
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
            {state.name}: {state.cancelled === null ? words(state) : "does not take place."}
          </p>
        </li>
      ))}
    </ul>
  );
}

function aheadWords(state: SessionState): string {
  return `${takenWords(state).join(", ")}.`;
}

function pastWords(state: SessionState): string {
  return state.closed ? markedSentence(state) : `register not closed; ${markedSentence(state)}`;
}
