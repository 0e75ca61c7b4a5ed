export { type Band, bandOf } from "./band-of.ts";
export {
  type BetaGeometric,
  betaGeometricLogLikelihood,
  type Cohort,
  cohortOf,
  expectedPeriods,
  retentionAfter,
  survivalOf,
} from "./beta-geometric.ts";
export {
  type BgBb,
  bgBbLogLikelihood,
  chanceOfTaking,
  chanceThereAt,
  expectedTaken,
  fitBgBb,
  takenMoments,
  type Taken,
} from "./bg-bb.ts";
export {
  type BgNbd,
  chanceOfAnother,
  chanceStillComing,
  expectedRepeats,
  expectedVisits,
  type Moments,
  repeatChances,
  type Repeats,
  visitMoments,
} from "./bg-nbd.ts";
export { fitBetaGeometric } from "./fit-beta-geometric.ts";
export { bgNbdLogLikelihood, fitBgNbd } from "./fit-bg-nbd.ts";
export type { Fitted } from "./fitted.ts";
export { kaplanMeier, stepAt, type SurvivalStep, type Watched } from "./kaplan-meier.ts";
