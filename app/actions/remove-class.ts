import type { Store } from "#app/ports";
import { good, type Result } from "#core/words";
import { readIds } from "./read-ids.ts";
import type { RemoveAskOf } from "./remove-hall.ts";

/** She gives a class up and takes it off her list. */
export async function removeClass(
  store: Store,
  ask: RemoveAskOf,
): Promise<Result<{ readonly removed: string }>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const changes = [{ kind: "remove-class", id: ask.id, from: ask.from }] as const;
  const done = await store.commit({ action: ask.action, practice: ask.practice, changes });
  return done.ok ? good({ removed: ask.id }) : done;
}
