import { checkClass, checkHall } from "#app/actions";
import { isCurrency, type Problem } from "#core/words";
import type { Documents, Kind } from "./kept-drafts.ts";

/**
 * What the server would refuse in a document, found here first, so that nothing unsound is sent. The currency
 * is that of the practice; while it is not known the server is left to judge.
 */
export function unsoundness<K extends Kind>(
  kind: K,
  document: Documents[K],
  currency: string | undefined,
): readonly Problem[] {
  if (kind === "details" || currency === undefined || !isCurrency(currency)) return [];
  const checked = kind === "halls" ? checkHall(document, currency) : checkClass(document, currency);
  return checked.ok ? [] : checked.problems;
}
