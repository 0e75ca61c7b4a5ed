export {
  type EveningDocument,
  type EveningDocumentInput,
  eveningDocumentSchema,
  mixSchema,
  pricesSchema,
} from "./evening-document.ts";
export type { EveningAnswer, WorkingLine } from "./evening-types.ts";
