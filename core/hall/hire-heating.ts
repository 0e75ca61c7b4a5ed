import { bad, type CurrencyCode, good, problem, type Result, readAmount } from "#core/words";
import type { HireHeating } from "./hire-terms.ts";
import type { HireTermsDocument } from "./hire-terms-document.ts";

/** Heating for each charged hour in its months; null when the hall asks none. Problem: "hire-heating-month". */
export function readHireHeating(
  heating: HireTermsDocument["heating"],
  currency: CurrencyCode,
  place: string,
): Result<HireHeating | null> {
  if (heating === undefined) return good(null);
  const perHour = readAmount(heating.perHour, currency, `${place}.perHour`);
  const wrong = heating.months.flatMap((month, index) =>
    Number.isInteger(month) && month >= 1 && month <= 12
      ? []
      : [
          problem(
            "hire-heating-month",
            `${place}.months[${index}]`,
            `${month} is not a month.`,
            "Give months as numbers from 1, January, to 12, December.",
          ),
        ],
  );
  if (!perHour.ok || wrong.length > 0) return bad(...(perHour.ok ? [] : perHour.problems), ...wrong);
  return good({ perHour: perHour.value, months: [...new Set(heating.months)] });
}
