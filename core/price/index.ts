export { breakEvenHeads } from "./break-even.ts";
export { evening } from "./evening.ts";
export { contributionOf, eveningAnswer, type SessionCosts, sessionCosts } from "./evening-answer.ts";
export {
  type EveningDocument,
  type EveningDocumentInput,
  eveningDocumentSchema,
  mixSchema,
  pricesSchema,
} from "./evening-document.ts";
export { type EveningJson, eveningJson } from "./evening-json.ts";
export {
  breakEvenSentence,
  costSentence,
  eveningSentences,
  type MoneyWriter,
  ordinarySentence,
} from "./evening-sentences.ts";
export type { Evening, EveningAnswer, EveningMinutes, HeadsLine, Payer } from "./evening-types.ts";
export { payerKey, payerName } from "./payer-key.ts";
export { type ReadEvening, readEvening, readHeads } from "./read-evening.ts";
export { readPayers } from "./read-payers.ts";
export { yieldOf } from "./yield.ts";
export { readCurrency, type WorkingLine } from "#core/words";
