export { type Brand, branded } from "./brand.ts";
export { monthNames, weekdayNames } from "./calendar-names.ts";
export { type CurrencyCode, currencyCodes, currencyDigits, isCurrency } from "./currency.ts";
export { type DocumentPath, placeOf, valueAt } from "./document-path.ts";
export { exactNumber, exactNumberText } from "./exact-number.ts";
export { type Locale, type TwinWord, word } from "./glossary.ts";
export { formatLength, formatLengthShort, type LengthUnits, parseLength } from "./length.ts";
export {
  type ExactMinor,
  exactText,
  type Minor,
  type Money,
  minor,
  moneyText,
  readMoney,
  roundToMinor,
} from "./money.ts";
export { type PracticeDocument, practiceDocumentSchema } from "./practice-document.ts";
export { bad, good, type Problem, problem, problemSentence, type Result } from "./problem.ts";
export { readAmount } from "./read-amount.ts";
export { readCurrency } from "./read-currency.ts";
export { readDate } from "./read-date.ts";
export { type ReadDocument, readDocument } from "./read-document.ts";
export { type Range, readExact, readMinutes } from "./read-number.ts";
export { together, togetherInOrder } from "./together.ts";
export {
  type Millimetres,
  type Minutes,
  metresFromMillimetres,
  millimetresFromMetres,
  minutes,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM_PER_METRE,
} from "./units.ts";
export type { WorkingLine } from "./working-line.ts";
export { plainWriter, type Writer } from "./writer.ts";
