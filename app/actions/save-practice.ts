import type { Saved, Store } from "#app/ports";
import type { PracticeDocument, Result } from "#core/words";
import { commitSaved } from "./commit-saved.ts";
import { readIds } from "./read-ids.ts";
import { readPractice } from "./read-practice.ts";

/** What a save asks: a document not read yet, and the version it was made from. */
export type SavePracticeAsk = {
  readonly action: string;
  readonly practice: string;
  readonly from: number;
  readonly document: unknown;
};

/** She changes her practice's name, currency, zone or units. */
export async function savePractice(
  store: Store,
  ask: SavePracticeAsk,
): Promise<Result<Saved<PracticeDocument>>> {
  const ids = readIds({ action: ask.action, practice: ask.practice });
  if (!ids.ok) return ids;
  const read = readPractice(ask.document);
  if (!read.ok) return read;
  const document = read.value.value;
  return commitSaved(store, { ...ask, id: ask.practice }, read.value, {
    kind: "practice",
    from: ask.from,
    document,
  });
}
