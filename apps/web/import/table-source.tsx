import { type ChangeEvent, useId, useState } from "react";
import { type Problem, problem } from "#core/words";
import { ProblemList } from "../parts/problem-list.tsx";

/** A file or pasted text that may hold a table. */
export type Source = { readonly name: string; readonly bytes: Uint8Array };

type Props = {
  readonly fileLabel: string;
  readonly pasteLabel: string;
  /** what a row may look like */
  readonly example: string;
  /** the most bytes that are read */
  readonly most: number;
  readonly put: (source: Source) => void;
};

/** Where a table comes from: a file on this device, or rows pasted from a spreadsheet or a message. */
export function TableSource({ fileLabel, pasteLabel, example, most, put }: Props) {
  const id = useId();
  const [text, setText] = useState("");
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const give = (source: Source) => {
    setProblems(source.bytes.length > most ? [tooLarge(source.name, most)] : []);
    if (source.bytes.length <= most) put(source);
  };
  const choose = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const [file] = box.files ?? [];
    if (file === undefined) return;
    // looked at before it is read: a film has more bytes than a phone can hold
    if (file.size > most) setProblems([tooLarge(file.name, most)]);
    else
      await file.arrayBuffer().then(
        (read) => give({ name: `“${file.name}”`, bytes: new Uint8Array(read) }),
        () => setProblems([gone(file.name)]),
      );
    // the same file can be chosen again after it was mended
    box.value = "";
  };
  return (
    <div className="stack">
      <div className="stack-close">
        <label htmlFor={`${id}-file`}>{fileLabel}</label>
        <input
          id={`${id}-file`}
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={(event) => void choose(event)}
        />
      </div>
      <div className="stack-close">
        <label htmlFor={`${id}-paste`}>{pasteLabel}</label>
        <span className="field-help" id={`${id}-help`}>
          {example}
        </span>
        <textarea
          id={`${id}-paste`}
          className="field-box field-words"
          rows={4}
          aria-describedby={`${id}-help`}
          autoComplete="off"
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        <p>
          <button
            type="button"
            className="button"
            disabled={text.trim() === ""}
            onClick={() => give({ name: "What you pasted", bytes: new TextEncoder().encode(text) })}
          >
            Read what is pasted
          </button>
        </p>
      </div>
      <ProblemList problems={problems} />
    </div>
  );
}

function tooLarge(name: string, most: number): Problem {
  const says = `${name} is larger than ${Math.round(most / 1_000_000)} million bytes.`;
  return problem("table-too-large", "", says, "Is it the right file? Cut it in two by date if it is.");
}

function gone(name: string): Problem {
  const says = `“${name}” cannot be read: it was moved, or the device does not let it be read.`;
  return problem("table-gone", "", says, "Choose it again.");
}
