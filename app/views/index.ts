export { type HallCharge, type HallChargeAsked, hallCharge } from "./hall-charge.ts";
export { type CoverChoice, type CoverChoiceAsked, coverChoice, usualExpected } from "./cover-choice.ts";
export { type ClassSheet, classSheet } from "./class-sheet.ts";
export type { ClassSheetInput } from "./class-sheet-input.ts";
export { datesInWords, dateWords, monthWords, timesInWords, timeWords, weekdayWord } from "./date-words.ts";
export type { EveningPart } from "./evening-part.ts";
export type { HeadsMark, HeadsRow } from "./heads-rows.ts";
export type { MatsPart } from "./mats-part.ts";
export type { OrdinaryPart } from "./ordinary-part.ts";
export type { PricesPart } from "./prices-part.ts";
export type { Missing, Said, SheetPart, SheetWorking, Unsound } from "./sheet-part.ts";
export type { LostRow, MonthRow, YearPart } from "./year-part.ts";
export type { ChangeRow, ChangesPart } from "./changes-part.ts";
export type { CoursesPart } from "./courses-part.ts";
export type { CurvePart, DrawnCurve } from "./curve-part.ts";
export type { HigherPart } from "./higher-part.ts";
export type { LadderPart } from "./ladder-part.ts";
export type { OwedPart } from "./owed-part.ts";
export type { PassesPart, PassRow } from "./passes-part.ts";
export { type PriceSheet, type PriceSheetInput, priceSheet } from "./price-sheet.ts";
export type { StudioPart } from "./studio-part.ts";
export type { ChanceRow, SurePart } from "./sure-part.ts";
export type { By, HallOffered, WayOffered } from "./compare-question.ts";
export { travelTo } from "./compare-question.ts";
export type { ComparedFigure, ComparedRow } from "./compare-rows.ts";
export { type CompareSheet, type CompareSheetInput, compareSheet } from "./compare-sheet.ts";
export {
  type HallSheetAsk,
  type HallSheetView,
  hallSheetView,
  hallToLay,
  type SheetClass,
} from "./hall-sheet.ts";
export { type FreeHallsPart, freeHallsPart } from "./free-halls-part.ts";
export { type AskOutlook, type OutlookSheet, type OutlookSheetInput, outlookSheet } from "./outlook-sheet.ts";
export type { AheadRow, GoingPart, HeldRow } from "./going-part.ts";
export type { NightRow, OpeningPart } from "./opening-part.ts";
export type { NextPart, NoticeRow } from "./next-part.ts";
export type { FullPart, RemedyRow } from "./full-part.ts";
export type { DemandPart } from "./demand-part.ts";
export {
  type OwnClassRow,
  atPlan,
  type WeekQuestion,
  type WeekQuestionInput,
  weekQuestion,
} from "./week-question.ts";
export { type DrawnClass, type DrawnDay, type WeekDrawing, weekDrawing } from "./week-drawing.ts";
export {
  type ChosenRow,
  chosenRow,
  type CurveRow,
  curveRows,
  hoursWords,
  type RejectedRow,
  rejectedRow,
  tieSentences,
  type WeekWriter,
} from "./week-rows.ts";
export { compareWeeks, type ComparedWeekRow, type WeekComparison } from "./week-compare.ts";
export { planChanges } from "./plan-changes.ts";
export {
  type ClassLeftOut,
  type YearQuestion,
  type YearQuestionInput,
  yearPlanOf,
  yearQuestion,
} from "./year-question.ts";
export {
  atMoneyPlan,
  moneyQuestion,
  type MoneyQuestion,
  type MoneyQuestionInput,
  type OwnMoneyRow,
} from "./money-question.ts";
export { type ClassGrowth, classGrowth, type ClassGrowthInput } from "./class-growth.ts";
export { booksAnswer, type BooksAnswer } from "./books-answer.ts";
export { booksCash, type CashLine, cashLines, type CashMonth } from "./books-cash.ts";
export { booksEarned, type EarnedLine, earnedLines, type EarnedMonthRow } from "./books-earned.ts";
export type { BooksInput, BooksLine, BooksNames } from "./books-input.ts";
export { booksOwed, type BooksOwed, type DueRow, type Settle, type UnpaidRow } from "./books-owed.ts";
export { booksTakings, type BooksTakings } from "./books-takings.ts";
export { taxYearAround } from "./books-tax-year.ts";
export { costWords, headingWords } from "./books-words.ts";
export { booksYearEnd, type BooksYearEnd } from "./books-year-end.ts";
