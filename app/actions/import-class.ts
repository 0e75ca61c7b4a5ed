import type { Saved, Store } from "#app/ports";
import type { ClassDocument } from "#core/class";
import { readCurrency } from "#core/price";
import { bad, type Result } from "#core/words";
import { checkClass } from "./check-class.ts";
import { idFromName } from "./id-from-name.ts";
import { alreadyThere, type ImportAsk } from "./import-hall.ts";
import { saveClass } from "./save-class.ts";

/** She takes a class in from a file: a sound one, whose problems come before all others. One that is there already is replaced only if she says so. */
export async function importClass(store: Store, ask: ImportAsk): Promise<Result<Saved<ClassDocument>>> {
  const id = ask.id ?? idFromName(ask.document, "class");
  const whole = await store.whole(ask.practice);
  if (!whole.ok) return whole;
  const currency = readCurrency(whole.value.practice.document.currency, "practice.currency");
  if (!currency.ok) return currency;
  const sound = checkClass(ask.document, currency.value);
  if (!sound.ok) return sound;
  const there = whole.value.classes.find((it) => it.id === id);
  if (there !== undefined && !ask.replace) return bad(alreadyThere("class", id));
  return saveClass(store, { ...ask, id, from: there?.version ?? 0 });
}
