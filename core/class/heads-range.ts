import type { ClassDocument } from "./class-document.ts";
import { isGuess } from "./guesses.ts";

/**
 * How far a guessed number of people may be out, a quarter either way, which is common practice and no
 * more: 8 may be 6 or 10. Never more than there is room for. Null when
 * the number is known, or when there is room for no range.
 */
export function headsRange(
  document: ClassDocument,
  capacity: number | null,
): readonly [number, number] | null {
  if (!isGuess(document, "heads")) return null;
  const low = Math.floor(document.heads * 0.75);
  const high = Math.min(Math.ceil(document.heads * 1.25), capacity ?? Number.POSITIVE_INFINITY);
  return high > low ? [low, high] : null;
}
