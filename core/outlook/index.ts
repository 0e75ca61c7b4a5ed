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
export { acceptAtMost, type Accepting } from "./opening/accept-at-most.ts";
export { openingAnswer } from "./opening/opening-answer.ts";
export {
  type OpeningDocument,
  type OpeningDocumentInput,
  openingDocumentSchema,
} from "./opening/opening-document.ts";
export type { OpeningJson } from "./opening/opening-json.ts";
export type { Together } from "./opening/turn-up.ts";
export {
  type ComingAnswer,
  comingAnswer,
  type ComingAnswerQuestion,
  comingJson,
} from "./coming/coming-answer.ts";
export type { ClosedDays, Period, PersonComing, Stays, Visit } from "./coming/coming-types.ts";
export { comingCaution, personSentence } from "./coming/coming-words.ts";
export { type StaysAnswer, staysAnswer, type StaysAnswerQuestion, staysJson } from "./coming/stays-answer.ts";
export { outlookAnswer } from "./question/outlook-answer.ts";
export {
  type OutlookDocument,
  type OutlookDocumentInput,
  outlookDocumentSchema,
} from "./question/outlook-document.ts";
export type { OutlookJson } from "./question/outlook-json.ts";
export { type Choice, coverOrCancel, type Evening, runTonight } from "./decide/tonight.ts";
export { type FullClass, type Remedies, remediesFor, type Remedy } from "./decide/second-class.ts";
export { type KeepAdvice, keepOrClose, type KeepQuestion } from "./decide/keep-or-close.ts";
export { type Band, totalAtLeast, totalBand } from "./ahead/total-band.ts";
export { type LookAhead, lookAhead, type SessionAhead } from "./ahead/look-ahead.ts";
export {
  type LearnedRoll,
  learnedRoll,
  type LearningEffort,
  type RollQuestion,
} from "./learning/learned-roll.ts";
export { priorDraw, ratesOf, type RollDraw, type RollGuess, rollPrior } from "./learning/roll-prior.ts";
export { rollRecord } from "./learning/roll-record.ts";
export { plateauOf, type RollRates } from "./roll/roll-rates.ts";
export { levelled, seasonOf, USUAL_SEASON } from "./season/season-index.ts";
export { readOpening } from "./opening/read-opening.ts";
export { readOutlook } from "./question/read-outlook.ts";
