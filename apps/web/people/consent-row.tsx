import { dateIn } from "#kernels/calendar";
import type { Consent, ConsentKind } from "#core/roll";
import type { PracticeDocument } from "#core/words";
import { dateWords } from "../words/dates.ts";
import { consentTitles, consentWords } from "./consent-words.ts";
import { DoneWords } from "./done-words.tsx";
import type { PersonAt } from "./person-page.tsx";

import { useDoing } from "./use-doing.ts";

type Props = { readonly at: PersonAt; readonly to: ConsentKind };

/** One thing that is asked: its words, the answer with its date, and what can be answered now. */
export function ConsentRow({ at: { practiceId, practice, id, person }, to }: Props) {
  const doing = useDoing(practiceId, practice.locale);
  const consent = person.consents[to];
  const now = consentWords(to, practice);
  const wording = consent?.given === true ? consent.wording : now;
  const title = consentTitles[to];
  const answer = (given: boolean, words: string) =>
    void doing.run({ kind: "consent", person: id, to, given, wording: words });
  return (
    <section className="agreed" aria-label={title}>
      <h3>{title}</h3>
      <p className="wording">{wording}</p>
      <p>{answerWords(consent, practice)}</p>
      <p className="row">
        {consent?.given === true ? (
          <button
            type="button"
            className="button"
            disabled={doing.busy}
            aria-label={`${title}: take it back`}
            onClick={() => answer(false, wording)}
          >
            Take it back
          </button>
        ) : (
          <button
            type="button"
            className="button"
            disabled={doing.busy}
            aria-label={`${title}: yes, agreed to these words`}
            onClick={() => answer(true, now)}
          >
            Yes, agreed to these words
          </button>
        )}
        {consent === undefined ? (
          <button
            type="button"
            className="button"
            disabled={doing.busy}
            aria-label={`${title}: no`}
            onClick={() => answer(false, now)}
          >
            No
          </button>
        ) : null}
      </p>
      <DoneWords doing={doing} />
    </section>
  );
}

function answerWords(consent: Consent | undefined, { locale, zone }: PracticeDocument): string {
  if (consent === undefined) return "Not asked yet: taken for no.";
  const on = dateWords(dateIn(consent.at, zone), locale);
  return consent.given ? `Agreed on ${on}.` : `No, since ${on}.`;
}
