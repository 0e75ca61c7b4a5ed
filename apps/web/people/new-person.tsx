import { useNavigate } from "@tanstack/react-router";
import type { Locale } from "#core/words";
import { type FormEvent, useRef, useState } from "react";
import { newId } from "../api/new-id.ts";
import { Show } from "../parts/show.tsx";
import { contactSlips, EMPTY_CONTACT } from "./contact-draft.ts";
import { ContactFields } from "./contact-fields.tsx";
import { DoneWords } from "./done-words.tsx";
import type { PersonHere } from "./record-reads.ts";
import { trimmed } from "./trimmed.ts";
import { useDoing } from "./use-doing.ts";
import { useTyped } from "./use-typed.ts";

type Props = {
  readonly practiceId: string;
  readonly locale: Locale;
  readonly people: readonly PersonHere[];
};

/** Somebody new: a name is enough. What she agrees to, and health, are asked on her own page, each by itself. */
export function NewPerson({ practiceId, locale, people }: Props) {
  const typed = useTyped(`${practiceId} new person`, EMPTY_CONTACT);
  const [tried, setTried] = useState(false);
  // the same id until it is kept: an answer that was lost writes nobody down twice
  const person = useRef(newId());
  const doing = useDoing(practiceId, locale);
  const go = useNavigate();
  const contact = typed.value;
  const slips = tried ? contactSlips(contact) : {};
  const sameName = people.find((it) => isSame(it.person.contact.name, contact.name));
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (Object.keys(contactSlips(contact)).length > 0) return;
    const id = person.current;
    if (!(await doing.run({ kind: "meet person", person: id, contact: trimmed(contact) }))) return;
    typed.clear(EMPTY_CONTACT);
    void go({ to: "/practice/$practice/people/$person", params: { practice: practiceId, person: id } });
  };
  return (
    <section className="part" aria-label="Somebody new">
      <Show summary="Write somebody new down" open={typed.touched || people.length === 0}>
        <form className="stack" noValidate onSubmit={(event) => void keep(event)}>
          <ContactFields contact={contact} slips={slips} put={typed.put} />
          <p className="small soft people-note">
            {sameName === undefined
              ? "A name is enough; everything else can be added later."
              : `${sameName.person.contact.name} is in the list already. Write a second one down only if it is somebody else.`}
          </p>
          <p className="row">
            <button type="submit" className="button button-main" disabled={doing.busy}>
              Write this person down
            </button>
          </p>
          <DoneWords doing={doing} />
        </form>
      </Show>
    </section>
  );
}

function isSame(one: string, other: string): boolean {
  return other.trim() !== "" && one.trim().toLowerCase() === other.trim().toLowerCase();
}
