import { classAnswer, type ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";

/** What the class sheet says an evening of this class costs and each person leaves, in whole minor units. */
export type SessionEvening = { readonly hall: number; readonly margin: number };

/** Null where the sheet cannot say it yet. */
export function sessionEvening(
  document: ClassDocument | undefined,
  hall: HallDocument | undefined,
  currency: string,
  date: string,
): SessionEvening | null {
  if (document === undefined || hall === undefined) return null;
  const answer = classAnswer(document, hall, currency, date, "break-even");
  if (!answer.ok) return null;
  const { hire, yield: each, costPerHead } = answer.value;
  return { hall: hire, margin: Math.round(each.sub(costPerHead).valueOf()) };
}
