import { checkClass, checkHall, checkHappened, checkPlan } from "#app/actions";
import { type CurrencyCode, isCurrency, type Problem, type Result } from "#core/words";
import type { Documents, Kind } from "./kept-drafts.ts";

/**
 * What the server would refuse in a document, found here first, so that nothing unsound is sent. The currency
 * is that of the practice; while it is not known the server is left to judge.
 */
export function unsoundness<K extends Kind>(
  kind: K,
  id: string,
  document: Documents[K],
  currency: string | undefined,
): readonly Problem[] {
  if (kind === "plans") return problemsOf(checkPlan(id, document));
  if (kind === "details" || currency === undefined || !isCurrency(currency)) return [];
  return problemsOf(checkOf(kind)(document, currency));
}

function problemsOf(checked: Result<unknown>): readonly Problem[] {
  return checked.ok ? [] : checked.problems;
}

function checkOf(
  kind: Exclude<Kind, "details" | "plans">,
): (document: unknown, currency: CurrencyCode) => Result<unknown> {
  switch (kind) {
    case "halls":
      return checkHall;
    case "classes":
      return checkClass;
    case "happened":
      return checkHappened;
  }
}
