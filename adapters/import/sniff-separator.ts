import Papa from "papaparse";

export type Separator = "," | ";" | "\t" | "|" | " ";

const CANDIDATES = [",", ";", "\t", "|"] as const;
const LINES_LOOKED_AT = 200;

/**
 * What stands between the cells: the sign that cuts most rows into the same number of cells, more than one. A
 * text cut by none of them may be in columns of spaces; one that is not has a single column.
 */
export function sniffSeparator(text: string): Separator {
  // some spreadsheets say so in a first line
  const said = /^sep=(.)\r?\n/.exec(text)?.[1];
  const known = CANDIDATES.find((it) => it === said);
  if (known !== undefined) return known;
  const found = CANDIDATES.map((separator) => ({ separator, ...evenness(rowsBy(text, separator)) }))
    .filter(({ cells, share }) => cells > 1 && share >= 0.5)
    .sort((a, b) => b.share - a.share || b.cells - a.cells)[0];
  if (found !== undefined) return found.separator;
  const spaced = evenness(linesOf(text).map((line) => line.trim().split(/\s+/)));
  return spaced.cells > 1 && spaced.share >= 0.9 ? " " : ",";
}

function rowsBy(text: string, separator: string): readonly (readonly string[])[] {
  const { data } = Papa.parse<string[]>(text, {
    delimiter: separator,
    preview: LINES_LOOKED_AT,
    skipEmptyLines: true,
  });
  return data;
}

function linesOf(text: string): readonly string[] {
  return text.split(/\r\n|\r|\n/, LINES_LOOKED_AT).filter((line) => line.trim() !== "");
}

/** The number of cells that most rows have, and the share of the rows that have it. */
function evenness(rows: readonly (readonly string[])[]): { readonly cells: number; readonly share: number } {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  const [cells = 1, count = 0] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
  return { cells, share: count / Math.max(1, rows.length) };
}
