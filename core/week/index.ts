export { weekAnswer } from "./week-answer.ts";
export { type WeekDocument, type WeekDocumentInput, weekDocumentSchema } from "./week-document.ts";
export type {
  ChangeJson,
  ChosenJson,
  DayJson,
  LoadJson,
  PointJson,
  RejectedJson,
  TargetJson,
  WeekJson,
} from "./week-json.ts";
