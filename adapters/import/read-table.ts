import { type NamesRow, type Table, tableOf } from "#core/table";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import Papa from "papaparse";
import { decodeText, type Encoding } from "./decode-text.ts";
import { type Separator, sniffSeparator } from "./sniff-separator.ts";

export type TableFile = { readonly table: Table; readonly encoding: Encoding; readonly separator: Separator };

/**
 * A table in the bytes of a CSV file, a tab-separated one, or text in columns of spaces, whatever its encoding
 * and separator; pasted text comes as its UTF-8 bytes. Quoted cells may hold separators and line ends.
 * Problems: "table-not-text", "table-empty", "table-quote-open".
 */
export function readTable(bytes: Uint8Array, namesRow: NamesRow = "look"): Result<TableFile> {
  const decoded = decodeText(bytes);
  if (!decoded.ok) return decoded;
  const { encoding } = decoded.value;
  // the end of the last line begins no row
  const text = withoutSaid(decoded.value.text).replace(/(?:\r\n|\r|\n)$/, "");
  const separator = sniffSeparator(decoded.value.text);
  const records = separator === " " ? good(spacedRecords(text)) : separatedRecords(text, separator);
  if (!records.ok) return records;
  return good({ table: tableOf(records.value, namesRow), encoding, separator });
}

/** A line like sep=; is for the spreadsheet: it stays a row, but a blank one, so that rows count as in the file. */
function withoutSaid(text: string): string {
  return text.replace(/^sep=.(?=\r?\n)/, "");
}

function separatedRecords(text: string, delimiter: string): Result<readonly (readonly string[])[]> {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false });
  const open = errors.find(({ code }) => code === "MissingQuotes");
  return open === undefined ? good(data) : bad(quoteOpen((open.row ?? data.length - 1) + 1));
}

function spacedRecords(text: string): readonly (readonly string[])[] {
  return text.split(/\r\n|\r|\n/).map((line) => line.trim().split(/\s+/));
}

function quoteOpen(row: number): Problem {
  const says = `A quotation mark in row ${row} is never closed.`;
  return problem("table-quote-open", `row ${row}`, says, "Close it, or take it out, and try again.");
}
