export { backwardHours } from "./compare/backward-hours.ts";
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
export { readPart } from "./read-part.ts";
export { readPayers } from "./read-payers.ts";
export { yieldOf } from "./yield.ts";
export { readCurrency, type WorkingLine } from "#core/words";
export { chanceText, plainDecimal } from "./chance-text.ts";
export {
  earnedInProportion,
  earnedOn,
  type LivePass,
  owedClasses,
  owedOn,
} from "./pass/owed-classes.ts";
export { type PassJson, passAnswer } from "./pass/pass-answer.ts";
export {
  type LivePassDocument,
  livePassSchema,
  type PassDocument,
  type PassDocumentInput,
  passDocumentSchema,
} from "./pass/pass-document.ts";
export { owedWorking } from "./pass/owed-working.ts";
export { type LivePasses, readLivePasses } from "./pass/read-live-passes.ts";
export {
  type PassUse,
  type PassUseBy,
  passUseBy,
  shareLosingClasses,
  type WeeksLine,
} from "./pass/pass-use-by.ts";
export { type ClosedSpan, type HoldersCalendar, type UseByDate, useByDate } from "./pass/use-by-date.ts";
export { type AmountWriter, coinText, plainAmount, type PartLine, partLines, type Reply } from "./reply.ts";
export {
  type HeadsChance,
  type TermChance,
  type UncertainEvening,
  type UncertainHeads,
  uncertainHeads,
} from "./heads/uncertain-heads.ts";
export {
  type Course,
  type CourseTerms,
  coursePrice,
  courseTerms,
  type MonthlySpread,
  monthlySpread,
} from "./ladder/course-terms.ts";
export { type DisplacedSingles, displacedSingles } from "./ladder/displaced-singles.ts";
export {
  type LadderFacts,
  ladderChecks,
  ladderFloor,
  ladderYield,
  usualPrice,
} from "./ladder/ladder-checks.ts";
export { readTiers } from "./ladder/read-tiers.ts";
export type { Tier } from "./ladder/tier.ts";
export { levelLoss } from "./price-rise.ts";
export { type TargetPay, targetPrice } from "./target-price.ts";
export { type DemandCurve, fitCurves, headsAt, type PricePoint } from "./curve/demand-curve.ts";
export {
  agreedRange,
  type PriceAt,
  type PriceCurve,
  type PriceRange,
  type PriceSetting,
  priceAt,
  priceCurve,
} from "./curve/price-curve.ts";
export {
  readSurvey,
  type SurveyDocument,
  type SurveyRow,
  type SurveySummary,
  surveySummary,
} from "./curve/read-survey.ts";
export { type Dial, type Flip, whatWouldChange } from "./change/what-would-change.ts";
export {
  type OwnClass,
  type OwnOrStudio,
  ownOrStudio,
  type PerHour,
  type StudioClass,
} from "./studio/own-or-studio.ts";
export { readStudio } from "./studio/read-studio.ts";
export { type StudioDocument, studioPaySchema, studioSchema } from "./studio/studio-document.ts";
export { type StudioPay, studioPay } from "./studio/studio-pay.ts";
export { type ChangeJson, changeJson, isGuess } from "./change/change-json.ts";
export { clockText } from "./compare/clock-text.ts";
export { type CompareJson, compareAnswer, type LeavesJson } from "./compare/compare-answer.ts";
export {
  type CompareDocument,
  type CompareDocumentInput,
  compareDocumentSchema,
  comparedHallSchema,
} from "./compare/compare-document.ts";
export { datesWords } from "./compare/compare-working.ts";
export type { Candidate, ComparedHall, Comparison, HallLine, Leaves } from "./compare/compare-types.ts";
export type { Differing } from "./compare/differing-orders.ts";
export { hallLine, type Measure, ordered, type View } from "./compare/hall-lines.ts";
export { readCapacity, readDemand } from "./heads/read-demand.ts";
export { priceAnswer } from "./question/price-answer.ts";
export {
  type PriceDocument,
  type PriceDocumentInput,
  priceDocumentSchema,
} from "./question/price-document.ts";
export type {
  CourseJson,
  CurveJson,
  HeadsJson,
  LadderJson,
  MonthlyJson,
  PriceJson,
  StudioJson,
} from "./question/price-json.ts";
export { withoutNoise } from "./without-noise.ts";
