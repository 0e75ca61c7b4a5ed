import type { ClassDocument } from "#core/class";
import type { Capacity, HallDocument, MatPlan } from "#core/hall";
import type { MoneyWriter } from "#core/price";
import type { PracticeDocument } from "#core/words";

/** What the page of one class needs to be worked out. */
export type ClassSheetInput = {
  readonly practice: Pick<PracticeDocument, "currency" | "locale">;
  readonly document: ClassDocument;
  /** the hall that the class names, null while it names none */
  readonly hall: HallDocument | null;
  /** the plan of the hall's floor for this class, null until it is worked out */
  readonly plan: Pick<MatPlan, "count" | "proven"> | null;
  readonly capacity: Capacity | null;
  /** YYYY-MM-DD: the evening that is worked out is the next one from here */
  readonly today: string;
  /** writes an exact amount for the reader, with the sign of the practice's currency */
  readonly money: MoneyWriter;
};
