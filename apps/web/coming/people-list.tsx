import { type PersonComing, personSentence } from "#core/outlook";
import type { Locale } from "#core/words";
import { useId, useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { FieldRow } from "../fields/field-row.tsx";
import { dayWords } from "../words/dates.ts";

type Props = {
  /** by name, and so they stay: nobody is put before another by a chance */
  readonly people: readonly PersonComing[];
  readonly notSeenFor: number;
  readonly locale: Locale;
};

/** So many names are on the page at a time: ten thousand would hold it up. */
const SHOWN = 25;

/** The people by name, each in a sentence: all of them, or those not seen for some weeks. */
export function PeopleList({ people, notSeenFor, locale }: Props) {
  const [who, setWho] = useState<"not seen" | "everybody">("not seen");
  const [part, setPart] = useState("");
  const [from, setFrom] = useState(0);
  const found = people.filter(
    (it) =>
      (who === "everybody" || it.weeksSince >= notSeenFor) &&
      it.person.toLowerCase().includes(part.trim().toLowerCase()),
  );
  const start = from < found.length ? from : 0;
  const shown = found.slice(start, start + SHOWN);
  return (
    <section className="part" aria-labelledby="people">
      <h2 id="people">The people, by name</h2>
      <div className="holds-fields measure">
        <ChoiceField
          label="Show"
          value={who}
          choices={[
            { value: "not seen", label: `not seen for ${notSeenFor} weeks` },
            { value: "everybody", label: "everybody" },
          ]}
          onChange={(value) => {
            setWho(value === "everybody" ? "everybody" : "not seen");
            setFrom(0);
          }}
        />
        <FindName
          value={part}
          put={(next) => {
            setPart(next);
            setFrom(0);
          }}
        />
      </div>
      <output>{countWords(found.length, start, shown.length)}</output>
      <ol className="list-plain ledger coming-people">
        {shown.map((it) => (
          <li key={it.person}>
            <p>{personSentence(it)}</p>
            <p className="small soft">{seenWords(it, locale)}</p>
          </li>
        ))}
      </ol>
      {found.length > SHOWN ? (
        <p className="row">
          <button
            type="button"
            className="button"
            disabled={start === 0}
            onClick={() => setFrom(Math.max(0, start - SHOWN))}
          >
            Names before
          </button>
          <button
            type="button"
            className="button"
            disabled={start + SHOWN >= found.length}
            onClick={() => setFrom(start + SHOWN)}
          >
            Names after
          </button>
        </p>
      ) : null}
    </section>
  );
}

function FindName({ value, put }: { readonly value: string; readonly put: (text: string) => void }) {
  const id = useId();
  return (
    <FieldRow id={id} label="Find a name" wide>
      <input
        id={id}
        className="field-box field-words"
        type="search"
        autoComplete="off"
        spellCheck={false}
        value={value}
        onChange={(event) => put(event.target.value)}
      />
    </FieldRow>
  );
}

function countWords(count: number, start: number, shown: number): string {
  if (count === 0) return "Nobody.";
  if (shown === count) return count === 1 ? "1 person." : `${count} people.`;
  return `${start + 1} to ${start + shown} of ${count} people.`;
}

function seenWords(it: PersonComing, locale: Locale): string {
  const seen =
    it.visits === 1
      ? `on ${dayWords(it.lastSeen, locale)}`
      : `first on ${dayWords(it.firstSeen, locale)}, last on ${dayWords(it.lastSeen, locale)}`;
  if (it.expectedVisits === null) return seen;
  const { low, high } = it.expectedVisits;
  return `${seen}; the visits to expect are put between ${low.toFixed(1)} and ${high.toFixed(1)}`;
}
