import type { Saved, Store } from "#app/ports";
import type { HallDocument } from "#core/hall";
import type { Result } from "#core/words";
import { checkHall } from "./check-hall.ts";
import { commitSaved } from "./commit-saved.ts";
import { practiceCurrency } from "./practice-currency.ts";
import { readIds } from "./read-ids.ts";

/** What a save asks: a document not read yet, and the version it was made from. */
export type SaveAskOf = {
  readonly action: string;
  readonly practice: string;
  readonly id: string;
  readonly from: number;
  readonly document: unknown;
};

/** She keeps the hall as she has drawn it. A hall that could not be measured out is not kept. */
export async function saveHall(store: Store, ask: SaveAskOf): Promise<Result<Saved<HallDocument>>> {
  const ids = readIds(ask);
  if (!ids.ok) return ids;
  const currency = await practiceCurrency(store, ask.practice);
  if (!currency.ok) return currency;
  const read = checkHall(ask.document, currency.value);
  if (!read.ok) return read;
  const change = { kind: "hall", id: ask.id, from: ask.from, document: read.value.value } as const;
  return commitSaved(store, ask, read.value, change);
}
