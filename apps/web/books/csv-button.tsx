import { saveFile } from "../parts/save-file.ts";
import { csvText } from "./csv-text.ts";

type Props = {
  readonly label: string;
  readonly name: string;
  readonly rows: () => readonly (readonly string[])[];
};

/** Saves rows to a file that a spreadsheet opens. */
export function CsvButton({ label, name, rows }: Props) {
  const save = () => saveFile(name, csvText(rows()), "text/csv;charset=utf-8");
  return (
    <button type="button" className="button" onClick={save}>
      {label}
    </button>
  );
}
