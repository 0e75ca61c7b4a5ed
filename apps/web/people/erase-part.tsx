import { Link, useNavigate } from "@tanstack/react-router";
import { useQuery } from "@tanstack/react-query";
import { useRef } from "react";
import { DoneWords } from "./done-words.tsx";
import type { PersonAt } from "./person-page.tsx";
import { passesQuery } from "./record-reads.ts";
import { useDoing } from "./use-doing.ts";

/** All that is kept, to be handed over; and erasing it, which says what goes and what stays and asks once more. */
export function ErasePart({ practiceId, practice, id, person }: PersonAt) {
  const dialog = useRef<HTMLDialogElement>(null);
  const passes = useQuery(passesQuery(practiceId, id));
  const left = (passes.data ?? []).reduce((sum, pass) => sum + pass.left, 0);
  const doing = useDoing(practiceId, practice.locale);
  const go = useNavigate();
  const erase = async () => {
    if (!(await doing.run({ kind: "erase person", person: id }))) return;
    dialog.current?.close();
    void go({ to: "/practice/$practice/people", params: { practice: practiceId } });
  };
  const name = person.contact.name;
  return (
    <section className="part" aria-labelledby="kept">
      <h2 id="kept">All that is kept</h2>
      <p>
        <Link to="/practice/$practice/people/$person/kept" params={{ practice: practiceId, person: id }}>
          Read all that is kept about {name}, or hand it over
        </Link>
      </p>
      <p>
        <button type="button" className="button" onClick={() => dialog.current?.showModal()}>
          Erase {name} …
        </button>
      </p>
      <dialog ref={dialog} className="ask" aria-labelledby="erase-title" onClose={doing.clear}>
        <div className="stack">
          <h2 id="erase-title">Erase {name}?</h2>
          <p>
            <strong>This goes</strong>, and nothing brings it back: name, phone, email, emergency contact, how
            the classes were heard of, every consent, the health form with its note, and what is said of
            cover.
          </p>
          <p>
            <strong>This stays, without a name</strong>: that somebody had a place or a pass, and what was
            paid, because the books need it for the tax authority. Accident records stay as they were written,
            with the name in them, for as long as the insurer and the law ask.
          </p>
          <p>
            <strong>Look at it yourself</strong>: backups from before still have this person, and so have
            papers, mails and lists that left Hallful.
          </p>
          {left === 0 ? null : (
            <p>
              <strong>{left === 1 ? "1 class is" : `${left} classes are`} left on passes</strong>: give money
              back for them first, or hand them on.
            </p>
          )}
          <DoneWords doing={doing} />
          <p className="row">
            <button type="button" className="button" onClick={() => dialog.current?.close()}>
              Keep everything
            </button>
            <button
              type="button"
              className="button button-main"
              disabled={doing.busy}
              onClick={() => void erase()}
            >
              Erase for good
            </button>
          </p>
        </div>
      </dialog>
    </section>
  );
}
