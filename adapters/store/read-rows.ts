import type { Kept } from "#app/ports";
import { bad, good, problem, readDocument, type Result, togetherInOrder } from "#core/words";
import type { z } from "zod";

type Row = { readonly id: string; readonly version: number; readonly document: string };

/**
 * Rows as kept documents. The schema fills in what later versions of the document added, so that a row
 * written years ago still reads. Problem: "stored-document-unreadable", with the record as its place.
 */
export function readRows<Schema extends z.ZodType>(
  kind: string,
  rows: readonly Row[],
  schema: Schema,
): Result<readonly Kept<z.output<Schema>>[]> {
  return togetherInOrder(rows.map((row) => readRow(`${kind}/${row.id}`, row, schema)));
}

function readRow<Schema extends z.ZodType>(
  place: string,
  row: Row,
  schema: Schema,
): Result<Kept<z.output<Schema>>> {
  const read = readDocument(schema, parsed(row.document));
  if (read.ok) return good({ id: row.id, version: row.version, document: read.value.value });
  const [first] = read.problems;
  const says = `A stored record cannot be read: ${first?.says ?? "it is not one of ours."}`;
  const next = "Restore the last backup with hallful restore, or put the record right by hand.";
  return bad(problem("stored-document-unreadable", place, says, next));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
