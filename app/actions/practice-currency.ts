import type { Store } from "#app/ports";
import { readCurrency } from "#core/price";
import { bad, type CurrencyCode, problem, type Result } from "#core/words";

/** The currency that the practice works in. Problems: those of the store, "not-found", "currency-unknown". */
export async function practiceCurrency(store: Store, practice: string): Promise<Result<CurrencyCode>> {
  const all = await store.practices();
  if (!all.ok) return all;
  const found = all.value.find((it) => it.id === practice);
  if (found === undefined) return bad(noPractice(practice));
  return readCurrency(found.document.currency, "practice.currency");
}

function noPractice(id: string) {
  const says = "There is no such practice here; it may have been opened in another data file.";
  return problem("not-found", `practice/${id}`, says, "Open the practice first, then save again.");
}
