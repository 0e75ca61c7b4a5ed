import type { ClassDocument } from "#core/class";

/** What the inputs of one part of the sheet are given. */
export type ClassPart = {
  readonly document: ClassDocument;
  readonly change: (part: Partial<ClassDocument>) => void;
};
