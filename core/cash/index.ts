export { moneyAnswer } from "./money-answer.ts";
export {
  type YearMoneyDocument,
  type YearMoneyDocumentInput,
  yearMoneySchema,
} from "./money-document.ts";
export type { CashMonthJson, MoneyJson } from "./money-json.ts";
export { type MoneyPlan, moneyPlanSchema } from "./money-plan.ts";
export type { PathJson } from "./path-json.ts";
export type { TaxTableDocument } from "./tax/tax-table-document.ts";
export { builtInTables, taxTableDocuments } from "./tax/tax-tables.ts";
export type { TaxJson } from "./tax-json.ts";
