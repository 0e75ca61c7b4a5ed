import { type HallDocument, hallDocumentSchema, hallFromDocument, readHireTerms } from "#core/hall";
import { readCurrency } from "#core/price";
import { bad, type CurrencyCode, good, type ReadDocument, readDocument, type Result } from "#core/words";

/**
 * A hall document that can be measured out and, when it has hire terms, charged by. A hall may have a
 * currency of its own; else its terms are in that of the practice.
 */
export function checkHall(input: unknown, currency: CurrencyCode): Result<ReadDocument<HallDocument>> {
  const read = readDocument(hallDocumentSchema, input);
  if (!read.ok) return read;
  const document = read.value.value;
  const floor = hallFromDocument(document);
  const terms = checkTerms(document, currency);
  const problems = [...(floor.ok ? [] : floor.problems), ...(terms.ok ? [] : terms.problems)];
  return problems.length === 0 ? good(read.value) : bad(...problems);
}

function checkTerms(document: HallDocument, currency: CurrencyCode): Result<unknown> {
  const own = document.currency === undefined ? good(currency) : readCurrency(document.currency);
  if (!own.ok || document.hire === undefined) return own;
  return readHireTerms(document.hire, own.value, "hire");
}
