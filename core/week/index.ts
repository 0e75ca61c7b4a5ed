export { bestWeek, type WeekOutcome, type WeekSearch, weekSearch } from "./best-week.ts";
export { type CountedWeek, countWeek } from "./check-week.ts";
export { type WayTold, waysTold } from "./ways-told.ts";
export { readWeek } from "./read-week.ts";
export { type TradePoint, tradeOff } from "./trade-off.ts";
export { weekAnswer } from "./week-answer.ts";
export { type WeekDocument, type WeekDocumentInput, weekDocumentSchema } from "./week-document.ts";
export type { DayJson, LoadJson, WeekHead } from "./week-head.ts";
export type {
  ChangeJson,
  ChosenJson,
  PointJson,
  RejectedJson,
  TargetJson,
  WeekJson,
} from "./week-json.ts";
export { type WeekPlan, weekPlanSchema } from "./week-plan.ts";
export { weekProgramme } from "./week-programme.ts";
export { type WeekStep, weekSteps } from "./week-steps.ts";
export type { Week } from "./week-types.ts";
