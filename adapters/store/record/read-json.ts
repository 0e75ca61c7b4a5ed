import { bad, good, problem, type Result } from "#core/words";

/** Stored JSON text. Problem: "stored-document-unreadable", with the record as its place. */
export function readJson(place: string, text: string): Result<unknown> {
  try {
    return good(JSON.parse(text));
  } catch {
    const says = "A stored record cannot be read: it is no JSON.";
    const next = "Restore the last backup with hallful restore, or put the record right by hand.";
    return bad(problem("stored-document-unreadable", place, says, next));
  }
}
