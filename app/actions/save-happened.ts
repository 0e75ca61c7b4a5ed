import type { Saved, Store } from "#app/ports";
import type { HappenedDocument } from "#core/outlook";
import type { Result } from "#core/words";
import { checkHappened } from "./check-happened.ts";
import { commitSaved } from "./commit-saved.ts";
import { readIds } from "./read-ids.ts";
import type { SaveAskOf } from "./save-hall.ts";

/** She writes down what really happened in a class: its sessions, kept under the id of the class. */
export async function saveHappened(store: Store, ask: SaveAskOf): Promise<Result<Saved<HappenedDocument>>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const read = checkHappened(ask.document);
  if (!read.ok) return read;
  const change = { kind: "happened", id: ask.id, from: ask.from, document: read.value.value } as const;
  return commitSaved(store, ask, read.value, change);
}
