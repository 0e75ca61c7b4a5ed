import type { Saved, Store } from "#app/ports";
import type { ClassDocument } from "#core/class";
import { bad, type Result } from "#core/words";
import { idFromName } from "./id-from-name.ts";
import { alreadyThere, type ImportAsk } from "./import-hall.ts";
import { saveClass } from "./save-class.ts";

/** She takes a class in from a file. One that is there already is replaced only if she says so. */
export async function importClass(store: Store, ask: ImportAsk): Promise<Result<Saved<ClassDocument>>> {
  const id = ask.id ?? idFromName(ask.document, "class");
  const whole = await store.whole(ask.practice);
  if (!whole.ok) return whole;
  const there = whole.value.classes.find((it) => it.id === id);
  if (there !== undefined && !ask.replace) return bad(alreadyThere("class", id));
  return saveClass(store, { ...ask, id, from: there?.version ?? 0 });
}
