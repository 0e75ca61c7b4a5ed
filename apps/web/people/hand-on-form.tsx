import { type FormEvent, useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import type { PassAt } from "./pass-item.tsx";

/** The rest of a pass goes to somebody else who is in the record. */
export function HandOnForm({ pass, handing, today, people }: PassAt) {
  const others = people.filter(({ id }) => id !== pass.holder);
  const [chosen, setChosen] = useState("");
  const [tried, setTried] = useState(false);
  const handOn = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (chosen === "") return;
    const change = { kind: "transferred", on: today, to: chosen } as const;
    void handing.run({ kind: "change pass", pass: pass.pass, change });
  };
  if (!pass.terms.transferable)
    return (
      <p>
        By its terms it cannot be handed on. What is left can be given back, and the other person buy her own.
      </p>
    );
  if (others.length === 0) return <p>Write the other person down first; then it can be handed on.</p>;
  return (
    <form className="stack-close measure holds-fields" noValidate onSubmit={handOn}>
      <ChoiceField
        label="To whom"
        help="Whoever comes speaks about her own health first."
        value={chosen}
        choices={[
          { value: "", label: "choose" },
          ...others.map(({ id, person }) => ({ value: id, label: person.contact.name })),
        ]}
        onChange={setChosen}
      />
      {tried && chosen === "" ? (
        <p className="field-problem">Nobody is chosen. Choose who is to have it.</p>
      ) : null}
      <p>
        <button type="submit" className="button" disabled={handing.busy}>
          Hand the rest on
        </button>
      </p>
      <ProblemList problems={handing.problems} announce={false} />
    </form>
  );
}
