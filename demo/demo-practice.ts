import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import type { PracticeDocument } from "#core/words";

/** An invented practice, each hall and class with the id it is kept under. */
export type DemoPractice = {
  readonly practice: PracticeDocument;
  readonly halls: readonly { readonly id: string; readonly document: HallDocument }[];
  readonly classes: readonly { readonly id: string; readonly document: ClassDocument }[];
  /** what really happened, by the id of the class */
  readonly happened: readonly { readonly id: string; readonly document: HappenedDocument }[];
  /** what she plans as a whole: "week", "year", "money" */
  readonly plans: readonly { readonly id: string; readonly document: Readonly<Record<string, unknown>> }[];
};
