import { dateIn } from "#kernels/calendar";
import type { PersonExport } from "#app/ports";
import { type Locale, type PracticeDocument, word } from "#core/words";
import type { ReactNode } from "react";
import { screenWriter } from "../record/screen-writer.ts";
import { coinsOf } from "./coins.ts";

type Props = { readonly kept: PersonExport; readonly practice: PracticeDocument };

/** Everything in words, part by part; what there is nothing of is said too. */
export function KeptWords({ kept, practice: { locale, zone } }: Props) {
  const { day } = screenWriter(locale);
  const money = (text: string, currency: string) => moneyOf(text, currency, locale);
  return (
    <>
      <KeptPart title="Contact">
        {contactRows(kept).map(([label, value]) => (
          <li key={label}>
            {label}: {value}
          </li>
        ))}
        <li>Written down on {day(dateIn(kept.since, zone))}.</li>
      </KeptPart>
      <KeptPart title="What was agreed to" none="Nothing was asked yet.">
        {kept.consents.map((it) => (
          <li key={`${it.to} ${it.at}`}>
            {day(dateIn(it.at, zone))}, {it.to}: {it.given ? "yes" : "no"}. “{it.wording}”
          </li>
        ))}
      </KeptPart>
      <KeptPart title="Health" none="No form was filled in.">
        {healthRows(kept, zone, day).map((it) => (
          <li key={it}>{it}</li>
        ))}
      </KeptPart>
      <KeptPart title={word("place", locale) === "spot" ? "Spots" : "Places"} none="None.">
        {kept.places.map((it) => (
          <li key={`${it.session} ${it.state} ${it.how}`}>
            {day(it.date)}, {it.name}: {it.how}, {it.state}
            {it.letGo ? ", not charged" : ""}
            {it.pass === null ? `, ${money(it.price, it.currency)}` : ""}
          </li>
        ))}
        {kept.waiting.map((it) => (
          <li key={`waiting ${it.session}`}>
            {day(it.date)}, {it.name}: on the {word("waiting list", locale)}
          </li>
        ))}
        {kept.covered.map((it) => (
          <li key={`covered ${it.session}`}>
            {day(it.date)}, {it.name}: taught it
          </li>
        ))}
        {kept.late.times === 0 ? null : (
          <li>
            Given up too late: {kept.late.times}, of which not charged: {kept.late.letGo}
          </li>
        )}
      </KeptPart>
      <KeptPart title="Passes" none="None.">
        {kept.passes.map((it) => (
          <li key={it.pass}>
            {it.name}, sold on {day(it.soldOn)} for {money(it.price, it.currency)}: {it.left} of {it.size}{" "}
            left, use by {day(it.useBy)}
            {it.usedOn.length === 0 ? "" : `; used on ${it.usedOn.map(day).join("; ")}`}
          </li>
        ))}
      </KeptPart>
      <KeptPart title="Payments" none="None.">
        {kept.payments.map((it, at) => (
          // two payments of a day for one thing may be alike in everything
          // oxlint-disable-next-line react/no-array-index-key
          <li key={at}>
            {day(it.on)}, {it.what}: {money(it.amount, it.currency)} by {it.by}
          </li>
        ))}
      </KeptPart>
    </>
  );
}

type PartProps = { readonly title: string; readonly none?: string; readonly children: ReactNode };

function KeptPart({ title, none = "", children }: PartProps) {
  const id = `kept-${title.toLowerCase().replace(/\W+/g, "-")}`;
  const isEmpty = [children].flat(2).every((it) => it === null || it === false);
  return (
    <section className="part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {isEmpty ? <p>{none}</p> : <ul className="listed">{children}</ul>}
    </section>
  );
}

const labels: Readonly<Record<string, string>> = {
  name: "Name",
  phone: "Phone",
  email: "Email",
  emergencyName: "In an emergency ring",
  emergencyPhone: "On the number",
  heard: "Heard of the classes from",
};

function contactRows({ contact }: PersonExport): readonly (readonly [string, string])[] {
  return Object.entries(labels).map(([key, label]) => {
    const value = contact[key] ?? "";
    return [label, value === "" ? "not given" : value];
  });
}

function healthRows(
  { healthForm }: PersonExport,
  zone: string,
  day: (date: string) => string,
): readonly string[] {
  if (healthForm === null) return [];
  const { at, reviewBy, speakFirst, note } = healthForm;
  const said = note.text === null ? "There is no note." : `The note: ${note.text}`;
  return [
    `A form was filled in on ${day(dateIn(at, zone))}, to be gone through again by ${day(reviewBy)}.`,
    speakFirst ? "There is a dot on the register: speak to me." : "There is no dot on the register.",
    note.opened ? said : "Whether there is a note, and what it says, is not opened here.",
  ];
}

function moneyOf(text: string, currency: string, locale: Locale): string {
  const back = text.startsWith("-");
  const coins = coinsOf(back ? text.slice(1) : text, currency);
  if (coins === null) return `${text} ${currency}`;
  return screenWriter(locale).money(back ? -coins : coins, currency);
}
