import { type FormEvent, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { DoneWords } from "./done-words.tsx";
import { HealthQuestions } from "./health-questions.tsx";
import type { PersonAt } from "./person-page.tsx";
import { aYearAfter, todayHere } from "./today-here.ts";
import { useDoing } from "./use-doing.ts";

const MOST = 400;

/** The form: answers are for the talk and go with it; a short note and the dot are what she confirms and keeps. */
export function HealthForm({ at, close }: { readonly at: PersonAt; readonly close: () => void }) {
  const { practiceId, practice, id } = at;
  const today = todayHere(practice.zone);
  const [inPerson, setInPerson] = useState(false);
  const [note, setNote] = useState("");
  const [speak, setSpeak] = useState(false);
  const [reviewBy, setReviewBy] = useState(() => aYearAfter(today));
  const doing = useDoing(practiceId, practice.locale);
  const long = note.length > MOST;
  const early = reviewBy <= today;
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (long || early) return;
    if (await doing.run({ kind: "health form", person: id, speak, reviewBy, note })) close();
  };
  return (
    <form className="stack" aria-label="Health form" noValidate onSubmit={(event) => void keep(event)}>
      <TickField
        label="I would rather speak about it in person"
        checked={inPerson}
        put={(chosen) => {
          setInPerson(chosen);
          if (chosen) setSpeak(true);
        }}
      />
      {inPerson ? (
        <p>Nothing need be answered here. The dot reminds the teacher to ask.</p>
      ) : (
        <HealthQuestions />
      )}
      <div className="holds-fields measure">
        <WordsField
          label="A short note, to be kept"
          help="What to do or to leave out in class, rather than what it is called. It takes the place of the note that is there now; leave it empty to keep none."
          long
          value={note}
          onChange={setNote}
          problem={long ? `The note has ${note.length} letters. Make it ${MOST} or fewer.` : null}
        />
        <p className="small soft">
          {note.length} of {MOST} letters.
        </p>
        <TickField label="A dot on the register: speak to me" checked={speak} put={setSpeak} />
        <DateField
          label="Go through it again by"
          value={reviewBy}
          put={setReviewBy}
          problem={early ? "This day is over. Give a later one; a year from now is usual." : null}
        />
      </div>
      <p className="small soft">
        Only the note and the dot are kept. The answers above go when this form closes. Tell your teacher when
        something changes.
      </p>
      <p className="row">
        <button type="submit" className="button button-main" disabled={doing.busy}>
          Keep the note and the dot
        </button>
        <button type="button" className="button" onClick={close}>
          Close without keeping anything
        </button>
      </p>
      <DoneWords doing={doing} />
    </form>
  );
}
