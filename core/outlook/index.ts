export { acceptAtMost, type Accepting, chanceOver, type OpeningRoom } from "./opening/accept-at-most.ts";
export { openingAnswer } from "./opening/opening-answer.ts";
export {
  type OpeningDocument,
  type OpeningDocumentInput,
  openingDocumentSchema,
} from "./opening/opening-document.ts";
export type { OpeningJson } from "./opening/opening-json.ts";
export { type Together, turnUpOf } from "./opening/turn-up.ts";
