import type { Saved, Store } from "#app/ports";
import type { HallDocument } from "#core/hall";
import { readCurrency } from "#core/price";
import { bad, problem, type Result } from "#core/words";
import { checkHall } from "./check-hall.ts";
import { idFromName } from "./id-from-name.ts";
import { saveHall } from "./save-hall.ts";

/** A document that came from a file; without an id it is kept under its name. */
export type ImportAsk = {
  readonly action: string;
  readonly practice: string;
  readonly id: string | undefined;
  readonly document: unknown;
  /** whether one that is there already may be replaced */
  readonly replace: boolean;
};

/** She takes a hall in from a file: a sound one, whose problems come before all others. One that is there already is replaced only if she says so. */
export async function importHall(store: Store, ask: ImportAsk): Promise<Result<Saved<HallDocument>>> {
  const id = ask.id ?? idFromName(ask.document, "hall");
  const whole = await store.whole(ask.practice);
  if (!whole.ok) return whole;
  const currency = readCurrency(whole.value.practice.document.currency, "practice.currency");
  if (!currency.ok) return currency;
  const sound = checkHall(ask.document, currency.value);
  if (!sound.ok) return sound;
  const there = whole.value.halls.find((it) => it.id === id);
  if (there !== undefined && !ask.replace) return bad(alreadyThere("hall", id));
  return saveHall(store, { ...ask, id, from: there?.version ?? 0 });
}

export function alreadyThere(kind: string, id: string) {
  const says = `There is already a ${kind} with the id ${id}.`;
  return problem("already-there", "id", says, "Add --replace to replace it, or --id NEW-ID to keep both.");
}
