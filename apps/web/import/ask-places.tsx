import { useId, useState } from "react";
import { FieldRow } from "../fields/field-row.tsx";
import { readNumber } from "../fields/read-number.ts";

type Props = { readonly usual: number | null; readonly put: (places: number | null) => void };

/** How many places an ordinary evening has, where neither the record nor every row says. */
export function AskPlaces({ usual, put }: Props) {
  const id = useId();
  const [text, setText] = useState(usual === null ? "" : String(usual));
  const read = text.trim() === "" ? null : readNumber(text, { least: 1, most: 1000, whole: true }, "");
  const problem = read === null || read.ok ? null : `${read.problems[0]?.says} ${read.problems[0]?.next}`;
  return (
    <FieldRow
      id={id}
      label="Places, where a row has none"
      help="on an ordinary evening; kept in the record"
      problem={problem}
    >
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text}
        aria-invalid={problem === null ? undefined : true}
        aria-describedby={problem === null ? `${id}-help` : `${id}-help ${id}-problem`}
        onChange={(event) => {
          setText(event.target.value);
          const next = event.target.value.trim();
          const answer = readNumber(next, { least: 1, most: 1000, whole: true }, "");
          put(answer.ok ? answer.value : null);
        }}
      />
    </FieldRow>
  );
}
