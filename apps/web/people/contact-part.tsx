import { type FormEvent, useState } from "react";
import { contactSlips } from "./contact-draft.ts";
import { ContactFields } from "./contact-fields.tsx";
import { DoneWords } from "./done-words.tsx";
import type { PersonAt } from "./person-page.tsx";
import { trimmed } from "./trimmed.ts";
import { useDoing } from "./use-doing.ts";
import { useTyped } from "./use-typed.ts";

/** How to reach somebody, to be changed. */
export function ContactPart({ practiceId, practice, id, person }: PersonAt) {
  const typed = useTyped(`${practiceId} contact ${id}`, person.contact);
  const [tried, setTried] = useState(false);
  const doing = useDoing(practiceId, practice.locale);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (Object.keys(contactSlips(typed.value)).length > 0) return;
    const contact = trimmed(typed.value);
    if (await doing.run({ kind: "change contact", person: id, contact })) typed.clear(contact);
  };
  return (
    <section className="part" aria-labelledby="contact">
      <h2 id="contact">How to reach {person.contact.name}</h2>
      <form className="stack" noValidate onSubmit={(event) => void keep(event)}>
        <ContactFields
          contact={typed.value}
          slips={tried ? contactSlips(typed.value) : {}}
          put={(contact) => {
            typed.put(contact);
            doing.clear();
          }}
        />
        <p className="row">
          <button type="submit" className="button button-main" disabled={doing.busy || !typed.touched}>
            Keep these changes
          </button>
          {typed.touched ? (
            <button type="button" className="button" onClick={() => typed.clear(person.contact)}>
              Back to what is kept
            </button>
          ) : null}
        </p>
        <DoneWords doing={doing} />
      </form>
    </section>
  );
}
