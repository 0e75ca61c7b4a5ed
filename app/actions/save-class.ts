import type { Saved, Store } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { Result } from "#core/words";
import { checkClass } from "./check-class.ts";
import { commitSaved } from "./commit-saved.ts";
import { practiceCurrency } from "./practice-currency.ts";
import { readIds } from "./read-ids.ts";
import type { SaveAskOf } from "./save-hall.ts";

/** She keeps the class sheet as it stands. Parts of it may still be guesses; what is there must be sound. */
export async function saveClass(store: Store, ask: SaveAskOf): Promise<Result<Saved<ClassDocument>>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const currency = await practiceCurrency(store, ask.practice);
  if (!currency.ok) return currency;
  const read = checkClass(ask.document, currency.value);
  if (!read.ok) return read;
  const change = { kind: "class", id: ask.id, from: ask.from, document: read.value.value } as const;
  return commitSaved(store, ask, read.value, change);
}
