export { demandAnswer, type DemandJson } from "./demand/demand-answer.ts";
export { type DemandBehind, demandBehind } from "./demand/demand-behind.ts";
export {
  type DemandDocument,
  type DemandDocumentInput,
  demandDocumentSchema,
} from "./demand/demand-document.ts";
export {
  type HappenedDocument,
  type HappenedDocumentInput,
  happenedSchema,
} from "./happened/happened-document.ts";
export type { HeldSession } from "./happened/held-session.ts";
export { readSessions } from "./happened/read-sessions.ts";
export { acceptAtMost, type Accepting, chanceOver, type OpeningRoom } from "./opening/accept-at-most.ts";
export { openingAnswer } from "./opening/opening-answer.ts";
export {
  type OpeningDocument,
  type OpeningDocumentInput,
  openingDocumentSchema,
} from "./opening/opening-document.ts";
export type { OpeningJson } from "./opening/opening-json.ts";
export { type Together, turnUpOf } from "./opening/turn-up.ts";
export {
  type ComingAnswer,
  comingAnswer,
  type ComingAnswerQuestion,
  comingJson,
} from "./coming/coming-answer.ts";
export type { ClosedDays, Period, PersonComing, Stays, Visit } from "./coming/coming-types.ts";
export { comingCaution, personSentence } from "./coming/coming-words.ts";
export { type StaysAnswer, staysAnswer, type StaysAnswerQuestion, staysJson } from "./coming/stays-answer.ts";
