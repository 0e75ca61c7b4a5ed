export { type ClassDocument, type ClassDocumentInput, classDocumentSchema } from "./class-document.ts";
export type { ClassYear, YearMonth } from "./class-year-types.ts";
