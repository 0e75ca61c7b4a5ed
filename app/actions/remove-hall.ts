import type { Store } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import { readIds } from "./read-ids.ts";

export type RemoveAskOf = {
  readonly action: string;
  readonly practice: string;
  readonly id: string;
  readonly from: number;
};

/** She takes a hall off her list. A hall that a class still uses stays. Problem: "hall-in-use". */
export async function removeHall(
  store: Store,
  ask: RemoveAskOf,
): Promise<Result<{ readonly removed: string }>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const whole = await store.whole(ask.practice);
  if (!whole.ok) return whole;
  const using = whole.value.classes.filter((it) => it.document.hall === ask.id);
  if (using.length > 0) return bad(inUse(using.map((it) => it.document.name)));
  const changes = [{ kind: "remove-hall", id: ask.id, from: ask.from }] as const;
  const done = await store.commit({ action: ask.action, practice: ask.practice, changes });
  return done.ok ? good({ removed: ask.id }) : done;
}

function inUse(classes: readonly string[]) {
  const says = `This hall is the hall of ${classes.map((name) => `“${name}”`).join(" and ")}.`;
  return problem(
    "hall-in-use",
    "id",
    says,
    "Give the class another hall, or none, and then remove this one.",
  );
}
