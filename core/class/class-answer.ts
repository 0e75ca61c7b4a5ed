import type { HallDocument } from "#core/hall";
import { type EveningAnswer, evening, readCurrency } from "#core/price";
import type { Result } from "#core/words";
import type { ClassDocument } from "./class-document.ts";
import { eveningDocument, hireOf, soundClass } from "./evening-of.ts";
import type { Answer } from "./guesses.ts";
import { nextDate } from "./next-date.ts";
import { onlyNeeded } from "./only-needed.ts";

/**
 * The class's next evening from `today` on, answered as far as one answer needs it. What the answer does
 * not need is not looked at, and its figures in the evening are nought. Problems: as of eveningOf.
 */
export function classAnswer(
  document: ClassDocument,
  hall: HallDocument,
  practiceCurrency: string,
  today: string,
  answer: Exclude<Answer, "mats" | "year">,
): Result<EveningAnswer> {
  const currency = readCurrency(practiceCurrency);
  if (!currency.ok) return currency;
  const hire = hireOf(hall, currency.value);
  if (!hire.ok) return hire;
  const needed = onlyNeeded(document, answer, currency.value, today);
  const sound = soundClass(needed, hire.value, currency.value);
  if (!sound.ok) return sound;
  return evening(eveningDocument(sound.value, nextDate(sound.value.dates, today)));
}
