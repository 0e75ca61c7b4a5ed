import type { DoAskInput } from "#app/record";
import { freeMats, type MeansOfPaying } from "#core/roll";
import { word } from "#core/words";
import { useState } from "react";
import { newId } from "../api/new-id.ts";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { Show } from "../parts/show.tsx";
import { BigChoice } from "./big-choice.tsx";
import { type HowChoice, howChoices } from "./how-choices.ts";
import { type PersonAsked, PersonField } from "./person-field.tsx";
import type { RegisterHere } from "./register-here.ts";
import { SheetDialog } from "./sheet-dialog.tsx";

type Props = {
  readonly here: RegisterHere;
  /** "walk in": at the door, on a mat at once; "book": ahead, or on the waiting list */
  readonly way: "walk in" | "book";
  readonly close: () => void;
};

type PaidBy = MeansOfPaying | "later";
const paidBy: readonly { readonly value: PaidBy; readonly label: string }[] = [
  { value: "cash", label: "Cash" },
  { value: "card", label: "Card" },
  { value: "bank", label: "Bank" },
  { value: "later", label: "Later" },
];
const nobody = (): PersonAsked => ({ id: newId(), name: "", known: false });

/** Somebody comes to the door, or takes a place ahead: a name, how, and what is paid. */
export function PlaceForm({ here, way, close }: Props) {
  const { id, session, record, writer, run, said } = here;
  const [person, setPerson] = useState(nobody);
  const [other, setOther] = useState<PersonAsked | null>(null);
  const [how, setHow] = useState("");
  const [paid, setPaid] = useState<PaidBy>(way === "walk in" ? "cash" : "later");
  const [emergency, setEmergency] = useState<Emergency>({ name: "", phone: "" });
  const [asked, setAsked] = useState(false);
  const ways = howChoices(id, session, person.known ? person.id : null, record.look, writer);
  const chosen = ways.find((it) => it.value === how) ?? ways[0];
  const free = freeMats(session);
  const unnamed = [person, ...(other === null ? [] : [other])].some(({ name }) => name.trim() === "");
  const submit = () => {
    setAsked(true);
    if (unnamed || chosen === undefined) return;
    if (done()) close();
  };
  const done = () => {
    if (chosen === undefined) return false;
    const words = `${person.name} ${way === "walk in" ? "walked in" : "takes a place"}${payWords(chosen, paid, here)}`;
    const part = { how: chosen.how, pass: chosen.pass, paid: paidOf(chosen, paid) };
    if (way === "walk in") return run(walkInAsk(here, person, emergency, part), words);
    const two = [person, ...(other === null ? [] : [other])];
    const met = two.every(
      (it) => isKnown(here, it) || run(meetAsk(it, emergency), `${it.name} is written down`),
    );
    return met && run(bookAsk(id, two, part), words);
  };
  return (
    <SheetDialog title={way === "walk in" ? "A walk-in" : "A place ahead"} close={close}>
      <p className="small">{roomWords(free, here, way)}</p>
      <PersonField label="Name" asked={person} look={record.look} put={setPerson} fresh={newId} />
      {way === "book" ? (
        <TickField
          label="Two come together"
          checked={other !== null}
          put={(checked) => setOther(checked ? nobody() : null)}
        />
      ) : null}
      {other === null ? null : (
        <PersonField label="And" asked={other} look={record.look} put={setOther} fresh={newId} />
      )}
      <BigChoice label="How" value={chosen?.value ?? ""} choices={ways} put={setHow} />
      {(chosen?.price ?? 0) > 0 ? (
        <BigChoice
          label={`${writer.money(chosen?.price ?? 0, session.currency)} ${other === null ? "paid by" : "for the first of the two (the other pays apart), paid by"}`}
          value={paid}
          choices={paidBy}
          put={setPaid}
        />
      ) : null}
      {person.known ? null : (
        <Show summary="Whom to ring if something happens (may stay empty)">
          <WordsField
            label="Name of who is to be rung"
            value={emergency.name}
            onChange={(name) => setEmergency({ ...emergency, name })}
          />
          <WordsField
            label="Number"
            value={emergency.phone}
            onChange={(phone) => setEmergency({ ...emergency, phone })}
          />
        </Show>
      )}
      {asked && unnamed ? (
        <p className="field-problem" role="alert">
          Write a name down first.
        </p>
      ) : null}
      {asked && said.problems.length > 0 ? <ProblemList problems={said.problems} /> : null}
      <button type="button" className="button button-main reach" onClick={submit}>
        {way === "walk in"
          ? "On a mat"
          : free < 1
            ? `On the ${word("waiting list", here.locale)}`
            : "Keep the place"}
      </button>
    </SheetDialog>
  );
}

type HowPaid = {
  readonly how: HowChoice["how"];
  readonly pass: string | null;
  readonly paid: { readonly amount: number; readonly by: MeansOfPaying } | null;
};

function paidOf({ price }: HowChoice, by: PaidBy): HowPaid["paid"] {
  return price === 0 || by === "later" ? null : { amount: price, by };
}

function payWords({ price }: HowChoice, by: PaidBy, { writer, session }: RegisterHere): string {
  if (price === 0) return "";
  const money = writer.money(price, session.currency);
  return by === "later" ? `, ${money} to be paid` : `, ${money} paid by ${by}`;
}

function isKnown({ record }: RegisterHere, { id }: PersonAsked): boolean {
  return record.keeper.read().streams.some(({ stream }) => stream === `person/${id}`);
}

type Emergency = { readonly name: string; readonly phone: string };

function contactOf({ name }: PersonAsked, emergency: Emergency) {
  return { name: name.trim(), emergencyName: emergency.name.trim(), emergencyPhone: emergency.phone.trim() };
}

function meetAsk(person: PersonAsked, emergency: Emergency): DoAskInput {
  return { kind: "meet person", person: person.id, contact: contactOf(person, emergency) };
}

/** Without signal a mat that is free here may be gone by the time this is told: then it is kept beside the places. */
function walkInAsk(
  { id, session, record }: RegisterHere,
  person: PersonAsked,
  emergency: Emergency,
  part: HowPaid,
): DoAskInput {
  const contact = person.known ? null : contactOf(person, emergency);
  const noSignal = (record.silent || !navigator.onLine) && freeMats(session) > 0;
  return { kind: "walk in", session: id, place: newId(), person: person.id, contact, noSignal, ...part };
}

function bookAsk(session: string, two: readonly PersonAsked[], part: HowPaid): DoAskInput {
  const [first, second] = two;
  if (first === undefined) throw new Error("nobody asked for a place");
  // who comes along pays for herself: a pass is one person's
  const along = { how: part.pass === null ? part.how : ("single" as const), pass: null, paid: null };
  const people = [
    { place: newId(), person: first.id, ...part },
    ...(second === undefined ? [] : [{ place: newId(), person: second.id, ...along }]),
  ];
  return { kind: "take place", session, people };
}

function roomWords(free: number, { session, locale }: RegisterHere, way: Props["way"]): string {
  if (free > 0) return free === 1 ? "1 mat is free." : `${free} mats are free.`;
  const all = `All ${session.capacity} mats are taken.`;
  return way === "walk in"
    ? `${all} Let nobody in beyond that number; offer the next date.`
    : `${all} The name goes on the ${word("waiting list", locale)}.`;
}
