import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { EntryForm, type FormAt } from "./entry-form.tsx";
import { PlaceOfMoney } from "./place-of-money.tsx";

/** Her own money: neither income nor cost. */
export function OwnForm({ at, doing }: FormAt) {
  const [what, setWhat] = useState<"put in" | "taken out">("put in");
  const [by, setBy] = useState<MeansOfPaying>("cash");
  return (
    <EntryForm
      at={at}
      doing={doing}
      label="Your own money"
      button="Write this down"
      slip=""
      write={(written) => doing.run({ kind: "own money", what, by, ...written })}
    >
      <ChoiceField
        label="What was done"
        value={what}
        choices={[
          { value: "put in", label: "put in, like change for the cash box" },
          { value: "taken out", label: "taken out for yourself" },
        ]}
        onChange={(chosen) => setWhat(chosen === "taken out" ? "taken out" : "put in")}
      />
      <PlaceOfMoney
        label={what === "put in" ? "Into" : "Out of"}
        value={by}
        places={meansOfPaying}
        put={setBy}
      />
    </EntryForm>
  );
}
