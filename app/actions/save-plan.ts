import type { PlanDocument, Saved, Store } from "#app/ports";
import type { Result } from "#core/words";
import { checkPlan } from "./check-plan.ts";
import { commitSaved } from "./commit-saved.ts";
import { readIds } from "./read-ids.ts";
import type { SaveAskOf } from "./save-hall.ts";

/** She plans for the whole practice: her week, her year or her money, each one document. */
export async function savePlan(store: Store, ask: SaveAskOf): Promise<Result<Saved<PlanDocument>>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const read = checkPlan(ask.id, ask.document);
  if (!read.ok) return read;
  const change = { kind: "plan", id: ask.id, from: ask.from, document: read.value.value } as const;
  return commitSaved(store, ask, read.value, change);
}
