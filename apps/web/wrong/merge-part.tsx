import { freeMats, takesMat } from "#core/roll";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import type { WrongHere } from "./wrong-here.ts";

/** Two thin sessions become one: everybody keeps a place and what was paid for it. */
export function MergePart({ here }: { readonly here: WrongHere }) {
  const { id, session, record, writer, now, run } = here;
  const others = record.look.sessions.filter(
    (it) => it.id !== id && it.state.cancelled === null && !it.state.closed && it.state.starts > now,
  );
  const [chosen, setChosen] = useState("");
  const into = others.find((it) => it.id === chosen);
  const coming = session.places.filter(takesMat).length;
  if (session.cancelled !== null || others.length === 0) return null;
  const would =
    into === undefined ? null : record.keeper.would({ kind: "merge sessions", session: id, into: into.id });
  const merge = () => {
    if (into !== undefined)
      run({ kind: "merge sessions", session: id, into: into.id }, `${session.name} becomes one with another`);
  };
  return (
    <div className="stack">
      <h2>Come together with another session</h2>
      <ChoiceField
        label={coming === 1 ? "The one who has a place comes to" : `The ${coming} who have a place come to`}
        value={chosen}
        choices={[
          { value: "", label: "choose" },
          ...others.map((it) => ({
            value: it.id,
            label: `${it.state.name}, ${writer.day(it.state.date)}, ${freeMats(it.state)} mats free`,
          })),
        ]}
        onChange={setChosen}
      />
      {would === null ? null : would.ok ? (
        <p>{would.value.says.join(" ")}</p>
      ) : (
        <ProblemList problems={would.problems} />
      )}
      <p>
        <button type="button" className="button reach" disabled={would?.ok !== true} onClick={merge}>
          Make the two one
        </button>
      </p>
    </div>
  );
}
