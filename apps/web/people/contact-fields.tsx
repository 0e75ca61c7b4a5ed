import type { Contact } from "#core/roll";
import { ChoiceField } from "../fields/choice-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { type ContactSlips, heardChoices } from "./contact-draft.ts";

type Props = {
  readonly contact: Contact;
  /** what is wrong, by field; empty until she tried to keep it */
  readonly slips: ContactSlips;
  readonly put: (contact: Contact) => void;
};

const OTHER = "other";

/** Name, how to reach somebody, whom to ring, and how the classes were heard of. */
export function ContactFields({ contact, slips, put }: Props) {
  const known = contact.heard === "" || heardChoices.some((it) => it === contact.heard);
  const field = (key: keyof Contact, label: string, help?: string) => (
    <WordsField
      label={label}
      {...(help === undefined ? {} : { help })}
      value={contact[key]}
      problem={slips[key] ?? null}
      onChange={(text) => put({ ...contact, [key]: text })}
    />
  );
  return (
    <div className="holds-fields measure">
      {field("name", "Name")}
      {field("phone", "Phone")}
      {field("email", "Email")}
      {field("emergencyName", "In an emergency ring", "Whom to ring if something happens in class.")}
      {field("emergencyPhone", "On the number")}
      <ChoiceField
        label="Heard of the classes from"
        value={known ? contact.heard : OTHER}
        choices={[
          { value: "", label: "not asked" },
          ...heardChoices.map((it) => ({ value: it, label: it })),
          { value: OTHER, label: "something else" },
        ]}
        onChange={(value) => put({ ...contact, heard: value === OTHER ? " " : value })}
      />
      {known ? null : field("heard", "Something else, namely")}
    </div>
  );
}
