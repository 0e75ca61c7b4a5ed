import type { CurrencyCode } from "#core/words";
import type { ClassDocument } from "./class-document.ts";
import type { Answer } from "./guesses.ts";
import { readClassYear } from "./read-class-year.ts";

/**
 * The class with what an answer does not need put out of the way, so that a half-typed price does not
 * hide what the evening costs. The year, which spreads the fixed costs and counts the hours for a volume
 * band, gives way to the one day `today` when it cannot be read.
 */
export function onlyNeeded(
  document: ClassDocument,
  answer: Answer,
  currency: CurrencyCode,
  today: string,
): ClassDocument {
  const { planning: _planning, outlook: _outlook, ...asked } = document;
  const plain = { ...asked, name: "class", start: "12:00", mats: null, ...noLimits };
  switch (answer) {
    case "mats":
    case "evening cost":
      return { ...withSoundYear(plain, currency, today), ...nobodyPays, heads: 0 };
    case "break-even":
      return { ...withSoundYear(plain, currency, today), heads: 0 };
    case "ordinary evening":
      return withSoundYear(plain, currency, today);
    case "year":
      return plain;
  }
}

const noLimits = { matsOwned: null, ownCap: null, insurerCap: null };
const nobodyPays: Pick<ClassDocument, "prices" | "mix"> = { prices: { passes: [] }, mix: { free: 1 } };

function withSoundYear(document: ClassDocument, currency: CurrencyCode, today: string): ClassDocument {
  if (readClassYear(document.year, currency).ok) return document;
  return { ...document, year: { from: today, until: today, closures: [], fixedPerYear: "0" } };
}
