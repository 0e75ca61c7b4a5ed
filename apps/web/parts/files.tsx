import { type ChangeEvent, useId, useState } from "react";
import { bad, type Problem, problem, type Result } from "#core/words";
import { ProblemList } from "./problem-list.tsx";
import { saveFile } from "./save-file.ts";

type ExportProps = { readonly label: string; readonly name: string; readonly document: unknown };

/** Saves a document to a file on this device. */
export function ExportButton({ label, name, document: content }: ExportProps) {
  const save = () => saveFile(name, `${JSON.stringify(content, null, 2)}\n`, "application/json");
  return (
    <button type="button" className="button" onClick={save}>
      {label}
    </button>
  );
}

/** "Tithe Barn Hall" and "hall" make "tithe-barn-hall.hall.json". */
export function fileNameOf(name: string, kind: "hall" | "class" | "person"): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `${plain === "" ? "unnamed" : plain}.${kind}.json`;
}

type ImportProps<Value> = {
  readonly label: string;
  readonly read: (content: unknown) => Result<Value>;
  readonly put: (value: Value) => void;
};

/** Brings in a document from a file, or says what is wrong with the file. */
export function ImportFile<Value>({ label, read, put }: ImportProps<Value>) {
  const id = useId();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const file = box.files?.[0];
    if (file === undefined) return;
    const answer = await readFile(file, read);
    // the same file can be chosen again after it was mended
    box.value = "";
    setProblems(answer.ok ? [] : answer.problems);
    if (answer.ok) put(answer.value);
  };
  return (
    <div className="stack-close">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="file" accept=".json,application/json" onChange={(event) => void take(event)} />
      <ProblemList problems={problems} />
    </div>
  );
}

/** A floor plan of a cathedral is some kilobytes: anything larger is another kind of file. */
const LARGEST = 1_000_000;

async function readFile<Value>(
  file: File,
  read: (content: unknown) => Result<Value>,
): Promise<Result<Value>> {
  if (file.size > LARGEST) {
    const says = `“${file.name}” is too large to be a hall or a class.`;
    return bad(problem("file-too-large", "", says, "Choose a file that was saved from Hallful."));
  }
  try {
    return read(JSON.parse(await file.text()));
  } catch {
    const says = `“${file.name}” is not a Hallful file: it cannot be read as JSON.`;
    return bad(problem("file-unreadable", "", says, "Choose a file that was saved from Hallful."));
  }
}
