import { type CurrencyCode, type Result, readMinutes, together } from "#core/words";
import { readHireBands, readHoursPerYear } from "./hire-bands.ts";
import { readHireFactor } from "./hire-factor.ts";
import { readHireHeating } from "./hire-heating.ts";
import { readHirePrice, readHireRates } from "./hire-price.ts";
import type { HireTerms } from "./hire-terms.ts";
import type { HireTermsDocument } from "./hire-terms-document.ts";

/** Reads hire terms, amounts in the given currency; `place` is where they stand in the document. */
export function readHireTerms(
  document: HireTermsDocument,
  currency: CurrencyCode,
  place: string,
): Result<HireTerms> {
  const at = (field: string): string => (place === "" ? field : `${place}.${field}`);
  const read = together({
    price: readHirePrice(document, currency, place),
    minimum: readMinutes(document.minimumMinutes, at("minimumMinutes")),
    increment: readMinutes(document.incrementMinutes, at("incrementMinutes"), { least: 1, most: 1440 }),
    freeBefore: readMinutes(document.freeBeforeMinutes, at("freeBeforeMinutes")),
    freeAfter: readMinutes(document.freeAfterMinutes, at("freeAfterMinutes")),
    heating: readHireHeating(document.heating, currency, at("heating")),
    setUpFactor: readHireFactor(document.setUpFactor ?? 1, at("setUpFactor")),
    weekendFactor: readHireFactor(document.weekendFactor ?? 1, at("weekendFactor")),
    bands: readHireBands(document.bands ?? [], at("bands")),
    hoursPerYear: readHoursPerYear(document.hoursPerYear, at("hoursPerYear")),
    rates: readHireRates(document.rates ?? [], currency, at("rates")),
  });
  return read.ok ? { ok: true, value: { currency, ...read.value } } : read;
}
