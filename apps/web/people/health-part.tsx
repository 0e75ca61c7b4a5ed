import { dateIn } from "#kernels/calendar";
import { consents } from "#core/roll";
import { useState } from "react";
import { dateWords } from "../words/dates.ts";
import { ConsentRow } from "./consent-row.tsx";
import { HealthForm } from "./health-form.tsx";
import { HealthNote } from "./health-note.tsx";
import type { PersonAt } from "./person-page.tsx";

/** Health: first whether anything may be kept at all, then a form of which a short note stays, sealed. */
export function HealthPart(at: PersonAt) {
  const { practice, person } = at;
  const [filling, setFilling] = useState(false);
  const form = person.healthForm;
  const allowed = consents(person, "health");
  return (
    <section className="part" aria-labelledby="health">
      <h2 id="health">Health</h2>
      <p className="caution">
        This is no medical advice, and no answer clears anybody for a class. Whoever has pain in the chest,
        feels faint, had an operation lately, was hurt just now, or is far on in a pregnancy or in a difficult
        one, asks a doctor, a midwife or a physiotherapist first.
      </p>
      <ConsentRow at={at} to="health" />
      {allowed ? null : (
        <p>
          Without this nothing about health is kept. It can be spoken about in person all the same, and nobody
          need say why.
        </p>
      )}
      {form === null ? null : (
        <p>
          A form was filled in on {dateWords(dateIn(form.at, practice.zone), practice.locale)}; go through it
          again by {dateWords(form.reviewBy, practice.locale)}.{" "}
          {form.speak ? "There is a dot on the register: speak to me." : "There is no dot on the register."}
        </p>
      )}
      {form === null || !allowed ? null : <HealthNote key={form.at} at={at} />}
      {!allowed ? null : filling ? (
        <HealthForm at={at} close={() => setFilling(false)} />
      ) : (
        <p>
          <button type="button" className="button" onClick={() => setFilling(true)}>
            {form === null ? "Fill in the health form together" : "Fill the form in anew"}
          </button>
        </p>
      )}
    </section>
  );
}
