import { consentKinds, contactSchema } from "#core/roll";
import { bad, good, problem } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { idSchema, isoDateSchema, nameSchema } from "./ask-parts.ts";
import { personFound } from "./found.ts";

const contact = contactSchema.extend({ name: nameSchema });

const meet = z
  .object({ kind: z.literal("meet person"), person: idSchema, contact })
  .describe("Somebody is written down.");

export const meetPerson = doing({
  ask: meet,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    if (desk.person(asked.person) !== undefined) return bad(known());
    desk.tellPerson(asked.person, { kind: "met", contact: asked.contact });
    return good({ says: ["Written down."] });
  },
});

function known() {
  const says = "This person is in the record already.";
  return problem("person-known", "person", says, "Change what is written there instead.");
}

const change = z
  .object({ kind: z.literal("change contact"), person: idSchema, contact })
  .describe("Name, phone, address or emergency contact change.");

export const changeContact = doing({
  ask: change,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    desk.tellPerson(asked.person, { kind: "contact changed", contact: asked.contact });
    return good({ says: ["Written down."] });
  },
});

const consent = z
  .object({
    kind: z.literal("consent"),
    person: idSchema,
    to: z.enum(consentKinds),
    given: z.boolean(),
    wording: z.string().max(500),
  })
  .describe("Somebody agrees to one thing, or takes it back. Each stands by itself.");

export const giveConsent = doing({
  ask: consent,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    const { to, given, wording } = asked;
    desk.tellPerson(asked.person, { kind: "consented", to, given, wording });
    // without consent to health nothing of health is kept
    if (to === "health" && !given && person.value.healthForm !== null) {
      desk.tellPerson(asked.person, { kind: "health form removed" });
      desk.seal({ person: asked.person, text: null });
      return good({ says: ["Taken back. The health form and its note are gone."] });
    }
    return good({ says: [given ? "Agreed, and dated." : "Not agreed, and dated."] });
  },
});

const health = z
  .object({
    kind: z.literal("health form"),
    person: idSchema,
    speak: z.boolean().describe("a dot on the register: speak with the teacher first"),
    reviewBy: isoDateSchema,
    note: z.string().max(400).describe("short; sealed before it is kept"),
  })
  .describe("A health form was filled in.");

export const healthForm = doing({
  ask: health,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    if (person.value.consents.health?.given !== true) return bad(noConsent());
    const { speak, reviewBy, note } = asked;
    desk.tellPerson(asked.person, { kind: "health form", speak, reviewBy });
    desk.seal({ person: asked.person, text: note.trim() === "" ? null : note });
    return good({ says: ["Kept, sealed. It is in no register, message or export of others."] });
  },
});

function noConsent() {
  const says = "This person has not agreed to a note about health being kept.";
  return problem("no-health-consent", "person", says, "Ask first, or keep nothing and speak in person.");
}

const cover = z
  .object({
    kind: z.literal("may cover"),
    person: idSchema,
    insuredUntil: isoDateSchema.nullable().describe("of the certificate that was seen"),
    styles: z.string().max(200),
    fee: z.int().min(0),
  })
  .describe("A teacher who may be asked to take a class.");

export const mayCover = doing({
  ask: cover,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    const { insuredUntil, styles, fee } = asked;
    desk.tellPerson(asked.person, { kind: "may cover", insuredUntil, styles, fee });
    return good({ says: [`Written down: may be asked to ${desk.writer.word("cover")}.`] });
  },
});

const erase = z
  .object({ kind: z.literal("erase person"), person: idSchema })
  .describe(
    "Everything about somebody goes but what the books and the accident book must keep, without the name.",
  );

export const erasePerson = doing({
  ask: erase,
  needs: ({ person }) => [`person/${person}`],
  decide: (asked, desk) => {
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    desk.erase(asked.person);
    desk.tellPerson(asked.person, { kind: "erased" });
    const says = [
      "Erased: name, contact, consents and health form, with the note.",
      "What the books must keep for the tax authority stays, without a name. Accident records stay as long as the insurer and the law ask.",
    ];
    return good({ says });
  },
});
