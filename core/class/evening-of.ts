import { type HallDocument, type HireTerms, type HireTermsDocument, readHireTerms } from "#core/hall";
import { type EveningDocumentInput, readCurrency } from "#core/price";
import {
  bad,
  type CurrencyCode,
  good,
  moneyText,
  problem,
  type Result,
  readDate,
  together,
} from "#core/words";
import { type ClassDates, classDates, firstYear } from "./class-dates.ts";
import type { ClassDocument } from "./class-document.ts";
import { classHours } from "./class-hours.ts";
import type { ClassParts } from "./class-parts.ts";
import { readClassParts } from "./read-class-parts.ts";

/**
 * One session of a class in a hall as an evening document, which can be saved and answered by itself.
 * Problems: those of the class, of the hire terms (at "hire"), "currency-unknown", "currency-differs",
 * "hire-missing", "date-unreadable".
 */
export function eveningOf(
  document: ClassDocument,
  hall: HallDocument,
  practiceCurrency: string,
  date: string,
): Result<EveningDocumentInput> {
  const currency = readCurrency(practiceCurrency);
  if (!currency.ok) return currency;
  const hire = hireOf(hall, currency.value);
  if (!hire.ok) return hire;
  const read = together({
    sound: soundClass(document, hire.value, currency.value),
    date: readDate(date, "date"),
  });
  return read.ok ? good(eveningDocument(read.value.sound, date)) : read;
}

/** What the hall charges, which must be in the currency of the practice. */
export function hireOf(hall: HallDocument, currency: CurrencyCode): Result<HireTermsDocument> {
  if (hall.hire === undefined) {
    const says = `What ${hall.name} charges is not known yet.`;
    return bad(problem("hire-missing", "hire", says, "Enter what the hall charges."));
  }
  if (hall.currency === undefined || hall.currency === currency) return good(hall.hire);
  const says = `${hall.name} charges in ${hall.currency} and the practice counts in ${currency}.`;
  return bad(problem("currency-differs", "currency", says, `Enter what the hall charges in ${currency}.`));
}

/** A class and the terms of its hall, read together, with the dates on which it runs. */
export type SoundClass = {
  readonly document: ClassDocument;
  readonly parts: ClassParts;
  readonly hire: HireTermsDocument;
  readonly terms: HireTerms;
  readonly currency: CurrencyCode;
  readonly dates: ClassDates;
};

export function soundClass(
  document: ClassDocument,
  hire: HireTermsDocument,
  currency: CurrencyCode,
): Result<SoundClass> {
  const read = together({
    parts: readClassParts(document, currency),
    terms: readHireTerms(hire, currency, "hire"),
  });
  if (!read.ok) return read;
  const { parts, terms } = read.value;
  return good({ document, hire, currency, parts, terms, dates: classDates(parts) });
}

/** The evening of one date; fixed costs are spread over the sessions of the first twelve months. */
export function eveningDocument(sound: SoundClass, date: string): EveningDocumentInput {
  const { document, parts, currency, dates } = sound;
  const sessions = firstYear(parts, dates).length;
  return {
    format: "hallful/evening@1",
    currency,
    date,
    hire: hireWithHours(sound),
    minutes: parts.minutes,
    travelCost: moneyText(parts.travelCost, currency),
    otherCost: moneyText(parts.otherCost, currency),
    perHead: moneyText(parts.perHead, currency),
    prices: document.prices,
    mix: document.mix,
    heads: document.heads,
    ...(sessions === 0
      ? {}
      : { fixedPerYear: moneyText(parts.fixedPerYear, currency), sessionsPerYear: sessions }),
  };
}

/** The terms with the hours a year that a volume band goes by: those stated, else this class's own. */
function hireWithHours({ hire, terms, parts, dates }: SoundClass): HireTermsDocument {
  if (terms.hoursPerYear !== null || terms.bands.length === 0) return hire;
  return { ...hire, hoursPerYear: classHours(parts, terms, dates).valueOf() };
}
