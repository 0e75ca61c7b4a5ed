/** Columns of text two spaces apart: the first to the left, figures to the right; a row too short stays short. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, at) =>
    Math.max(...rows.map((row) => row[at]?.length ?? 0)),
  );
  return rows
    .map((row) => `  ${row.map((cell, at) => set(cell, widths[at] ?? 0, at)).join("  ")}`.trimEnd())
    .join("\n")
    .concat("\n");
}

function set(cell: string, width: number, column: number): string {
  return column === 0 ? cell.padEnd(width) : cell.padStart(width);
}
