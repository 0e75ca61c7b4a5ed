import { idFromName } from "#app/actions";
import { costWords } from "#app/views";
import { type CostHeading, costHeadings } from "#core/books";
import type { MeansOfPaying } from "#core/roll";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { peopleQuery } from "../people/record-reads.ts";
import { EntryForm, type FormAt } from "./entry-form.tsx";
import { PAID_FROM, PlaceOfMoney } from "./place-of-money.tsx";

const hows = [
  { value: "bought", label: "paid at once" },
  { value: "due", label: "owed, to be paid later" },
  { value: "came back", label: "came back, or was written by mistake" },
] as const;

/** A cost, owed from now on or paid at once. */
export function CostForm({ at, doing }: FormAt) {
  const { practice, practiceId, halls } = at;
  const people = useQuery(peopleQuery(practiceId));
  const [cost, setCost] = useState<CostHeading>("hall");
  const [hall, setHall] = useState(halls[0]?.id ?? "");
  const [name, setName] = useState("");
  const [how, setHow] = useState<(typeof hows)[number]["value"]>("bought");
  const [by, setBy] = useState<MeansOfPaying>("bank");
  const fromHalls = cost === "hall" && hall !== "";
  const known = people.data?.find(({ person }) => person.contact.name === name.trim())?.id;
  const to = fromHalls ? hall : (known ?? idFromName({ name }, ""));
  return (
    <EntryForm
      at={at}
      doing={doing}
      label="A cost"
      button="Write this cost down"
      slip={to === "" ? "Write who is paid." : ""}
      write={({ amount, currency, on }) =>
        doing.run({
          kind: "write cost",
          cost,
          to,
          amount,
          currency,
          on,
          how,
          by,
        })
      }
    >
      <ChoiceField
        label="For"
        value={cost}
        choices={costHeadings.map((it) => ({ value: it, label: costWords(it, practice.locale) }))}
        onChange={(chosen) => setCost(costHeadings.find((it) => it === chosen) ?? "other")}
      />
      {cost === "hall" && halls.length > 0 ? (
        <ChoiceField
          label="Hall"
          value={hall}
          choices={[
            ...halls.map(({ id, document }) => ({ value: id, label: document.name })),
            { value: "", label: "another hall" },
          ]}
          onChange={setHall}
        />
      ) : null}
      {fromHalls ? null : <WordsField label="Paid to" value={name} onChange={setName} />}
      <ChoiceField
        label="Paid"
        value={how}
        choices={hows}
        onChange={(chosen) => setHow(hows.find(({ value }) => value === chosen)?.value ?? "bought")}
      />
      {how === "due" ? null : (
        <PlaceOfMoney
          label={how === "bought" ? "Paid out of" : "Back into"}
          value={by}
          places={PAID_FROM}
          put={setBy}
        />
      )}
    </EntryForm>
  );
}
