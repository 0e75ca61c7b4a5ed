import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import type { PracticeDocument } from "#core/words";
import { useId, useState } from "react";
import { found } from "./found.ts";
import { type PersonHere, seenQuery } from "./record-reads.ts";
import { SEEN_WEEKS, seenWords } from "./seen-words.ts";
import { todayHere, weeksBefore } from "./today-here.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly people: readonly PersonHere[];
};

/** So many names are drawn at once: a hundred are three screens of a phone, and the search finds the rest. */
const AT_ONCE = 100;

/** Everybody by name, with a search over name, phone and email, and when each was last there. */
export function PeopleList({ practiceId, practice, people }: Props) {
  const [search, setSearch] = useState("");
  const [most, setMost] = useState(AT_ONCE);
  const box = useId();
  const today = todayHere(practice.zone);
  const seen = useQuery(seenQuery(practiceId, weeksBefore(today, SEEN_WEEKS), today));
  const last = new Map(seen.data?.map((it) => [it.person, it]));
  const shown = found(people, search);
  return (
    <section className="part" aria-labelledby="everybody">
      <h2 id="everybody">Everybody</h2>
      <div className="people-search">
        <label htmlFor={box}>Search for a name, a phone number or an email</label>
        <input
          id={box}
          type="search"
          className="field-box field-words"
          autoComplete="off"
          value={search}
          onChange={(event) => setSearch(event.target.value)}
        />
      </div>
      <output className="small soft">{countWords(shown.length, people.length, search)}</output>
      <ul className="list-plain ledger">
        {shown.slice(0, most).map(({ id, person }) => (
          <li key={id} className="stack-close">
            <span className="row">
              <Link to="/practice/$practice/people/$person" params={{ practice: practiceId, person: id }}>
                {person.contact.name}
              </Link>
              {person.healthForm?.speak === true ? <SpeakToMe /> : null}
            </span>
            {seen.data === undefined ? null : (
              <span className="small soft">{seenWords(last.get(id), today, practice.locale)}</span>
            )}
          </li>
        ))}
      </ul>
      {shown.length > most ? (
        <p>
          <button type="button" className="button" onClick={() => setMost(most + AT_ONCE)}>
            Show more names
          </button>
        </p>
      ) : null}
    </section>
  );
}

/** The dot, with its words: it says nothing of why. */
export function SpeakToMe() {
  return (
    <span className="speak-first small">
      <span aria-hidden="true">●</span> speak to me
    </span>
  );
}

function countWords(shown: number, all: number, search: string): string {
  const people = all === 1 ? "1 person" : `${all} people`;
  if (search.trim() === "") return `${people}.`;
  return shown === 0 ? `Nobody of ${people} is called so.` : `${shown} of ${people}.`;
}
