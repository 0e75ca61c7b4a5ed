export { classAnswer } from "./class-answer.ts";
export { type ClassDocument, type ClassDocumentInput, classDocumentSchema } from "./class-document.ts";
export { classYear } from "./class-year.ts";
export type { ClassYear, SessionsAtCost, YearMonth } from "./class-year-types.ts";
export { type CountedHours, countedHours } from "./counted-hours.ts";
export { type EmptyClass, emptyClass } from "./empty-class.ts";
export { eveningOf, hireOf } from "./evening-of.ts";
export { type FreeHall, freeHalls, type HallWindow } from "./free-halls.ts";
export { guessName } from "./guess-names.ts";
export {
  type Answer,
  guessesBehind,
  guessesSentence,
  isGuess,
  markGuess,
  markKnown,
} from "./guesses.ts";
export { headsRange } from "./heads-range.ts";
export { nextDate } from "./next-date.ts";
export { onlyNeeded } from "./only-needed.ts";
export type { HallForClass, Planning } from "./planning-document.ts";
export {
  type FigureName,
  isPlanningGuess,
  type PlanningFigures,
  planningOf,
  withFigure,
} from "./planning-of.ts";
export { readClass } from "./read-class.ts";
export { sessionsInYear } from "./sessions-in-year.ts";
export { teachingDates } from "./teaching-dates.ts";
export type { ClassOutlook } from "./class-outlook-document.ts";
export { nextSession } from "./next-session.ts";
export {
  isOutlookGuess,
  type OutlookFigure,
  outlookFigure,
  outlookFigureAt,
  withOutlookFigure,
} from "./outlook-figures.ts";
export { classOpeningQuestion, classOutlookQuestion } from "./outlook-questions.ts";
