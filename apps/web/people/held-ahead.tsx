import { useQuery } from "@tanstack/react-query";
import { placeOf } from "#core/roll";
import { type Locale, word } from "#core/words";
import type { DoAskInput } from "#app/record";
import { newId } from "../api/new-id.ts";
import { dateWords } from "../words/dates.ts";
import type { PassAt } from "./pass-item.tsx";
import { sessionsQuery } from "./record-reads.ts";

/** Places ahead that are held out of a pass, each of which can be given up; and those a block still lacks. */
export function HeldAhead(it: PassAt) {
  const { pass, at, today } = it;
  const known = new Set([...pass.promised, ...pass.used].map(({ session }) => session));
  const lacking = pass.left === 0 ? [] : pass.sessions.filter((session) => !known.has(session));
  if (pass.promised.length === 0 && lacking.length === 0) return null;
  return <HeldRows {...it} lacking={lacking} key={`${at.id} ${today}`} />;
}

function HeldRows({ pass, at, today, doing, lacking }: PassAt & { readonly lacking: readonly string[] }) {
  const { practiceId, practice, id } = at;
  const until = [today, ...pass.promised.map(({ on }) => on), pass.useBy].sort().at(-1) ?? today;
  const sessions = useQuery(sessionsQuery(practiceId, today, until));
  const here = new Map(sessions.data?.map((it) => [it.id, it.session]));
  const ahead = lacking.filter((session) => {
    const found = here.get(session);
    return found !== undefined && found.cancelled === null && found.date >= today;
  });
  const placeIn = (session: string) => {
    const found = here.get(session);
    return found === undefined ? undefined : placeOf(found, id);
  };
  const take = () => void doing.run(...ahead.map((session) => takeAsk(session, id, pass.pass, pass.form)));
  return (
    <div className="stack-close">
      {pass.promised.length === 0 ? null : (
        <>
          <p>{capital(word("place", practice.locale))}s ahead are held out of it:</p>
          <ul className="list-plain">
            {pass.promised.map(({ session, on }) => {
              const place = placeIn(session);
              const day = dateWords(on, practice.locale);
              return (
                <li key={session} className="row">
                  <span>{day}</span>
                  {place === undefined ? null : (
                    <button
                      type="button"
                      className="button"
                      disabled={doing.busy}
                      aria-label={`Give up the ${word("place", practice.locale)} on ${day}`}
                      onClick={() => void doing.run({ kind: "give up place", session, place: place.id })}
                    >
                      Give it up
                    </button>
                  )}
                </li>
              );
            })}
          </ul>
        </>
      )}
      {ahead.length === 0 ? null : (
        <p className="row">
          <span>
            No {word("place", practice.locale)} is held yet on{" "}
            {ahead.map((it) => dayOf(here.get(it)?.date, practice.locale)).join(", ")}.
          </span>
          <button type="button" className="button" disabled={doing.busy} onClick={take}>
            Take these {word("place", practice.locale)}s
          </button>
        </p>
      )}
    </div>
  );
}

function dayOf(date: string | undefined, locale: Locale): string {
  return date === undefined ? "" : dateWords(date, locale);
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** The ask for one place out of a pass or a block. */
export function takeAsk(session: string, person: string, pass: string, how: "pass" | "block"): DoAskInput {
  return { kind: "take place", session, people: [{ place: newId(), person, how, pass }] };
}
