import { csvText } from "./csv-text.ts";

type Props = {
  readonly label: string;
  readonly name: string;
  readonly rows: () => readonly (readonly string[])[];
};

/** Saves rows to a file that a spreadsheet opens. */
export function CsvButton({ label, name, rows }: Props) {
  const save = () => {
    const blob = new Blob([csvText(rows())], { type: "text/csv;charset=utf-8" });
    const address = URL.createObjectURL(blob);
    const link = document.createElement("a");
    link.href = address;
    link.download = name;
    link.click();
    URL.revokeObjectURL(address);
  };
  return (
    <button type="button" className="button" onClick={save}>
      {label}
    </button>
  );
}
