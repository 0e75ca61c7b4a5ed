import { isCurrency, minor, moneyText, readMoney, word } from "#core/words";
import { type FormEvent, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { FormOf } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { Show } from "../parts/show.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { DoneWords } from "./done-words.tsx";
import type { PersonAt } from "./person-page.tsx";
import { todayHere } from "./today-here.ts";
import { useDoing } from "./use-doing.ts";
import { useOwnForm } from "./use-own-form.ts";

/** A teacher who may be asked to take a class: until when insured, in which styles, for what fee. */
export function CoverPart(at: PersonAt) {
  const { practice, person } = at;
  const cover = word("cover", practice.locale);
  return (
    <section className="part" aria-labelledby="cover">
      <h2 id="cover">May {cover}</h2>
      <p>{coverWords(at)}</p>
      <Show summary={person.mayCover === null ? `Put on the ${cover} list` : "Change this"}>
        <CoverForm key={JSON.stringify(person.mayCover)} {...at} />
      </Show>
    </section>
  );
}

function coverWords({ practice: { locale, currency, zone }, person: { mayCover, contact } }: PersonAt) {
  const cover = word("cover", locale);
  if (mayCover === null) return `${contact.name} is not on the ${cover} list.`;
  const { day, money } = screenWriter(locale);
  const { insuredUntil, styles, fee } = mayCover;
  const may = `May be asked to take a class for ${money(fee, currency)} a session${styles === "" ? "" : `: ${styles}`}.`;
  if (insuredUntil === null) return `${may} No insurance was seen, so no session can be given yet.`;
  return insuredUntil < todayHere(zone)
    ? `${may} The insurance that was seen ended on ${day(insuredUntil)}: ask for the new one first.`
    : `${may} Insured until ${day(insuredUntil)}, as seen on the certificate.`;
}

function CoverForm({ practiceId, practice, id, person: { mayCover } }: PersonAt) {
  const { currency, locale } = practice;
  const [seen, setSeen] = useState(typeof mayCover?.insuredUntil === "string");
  const [until, setUntil] = useState(mayCover?.insuredUntil ?? todayHere(practice.zone));
  const [styles, setStyles] = useState(mayCover?.styles ?? "");
  const [fee, setFee] = useState(feeText(mayCover?.fee ?? 0, currency));
  const form = useOwnForm(currency);
  const doing = useDoing(practiceId, locale);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const read = isCurrency(currency) ? readMoney(fee, currency, "fee") : null;
    if (read === null || !read.ok || form.hasSlips || styles.length > 200) return;
    const insuredUntil = seen ? until : null;
    void doing.run({ kind: "may cover", person: id, insuredUntil, styles: styles.trim(), fee: read.value });
  };
  return (
    <FormOf form={form.form}>
      <form className="stack measure holds-fields" noValidate onSubmit={keep}>
        <div>
          <WordsField
            label="What this teacher teaches"
            value={styles}
            onChange={setStyles}
            problem={styles.length > 200 ? "This is too long. Make it 200 letters or fewer." : null}
          />
          <MoneyField path="fee" label="Usual fee" per="a session" value={fee} put={setFee} />
          <TickField label="I have seen a certificate of insurance" checked={seen} put={setSeen} />
          {seen ? <DateField label="Insured until" value={until} put={setUntil} /> : null}
        </div>
        <p>
          <button type="submit" className="button" disabled={doing.busy}>
            Keep this
          </button>
        </p>
        <DoneWords doing={doing} />
      </form>
    </FormOf>
  );
}

function feeText(fee: number, currency: string): string {
  return isCurrency(currency) ? moneyText(minor(fee), currency) : String(fee);
}
