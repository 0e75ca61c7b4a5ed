/**
 * Rows as comma-separated text by RFC 4180: lines end with CRLF, a cell with a comma, a quote or a line end stands in
 * quotes with its own quotes doubled. A mark of the byte order goes first, by which spreadsheets know UTF-8.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return `\uFEFF${rows.map((row) => `${row.map(cell).join(",")}\r\n`).join("")}`;
}

function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
