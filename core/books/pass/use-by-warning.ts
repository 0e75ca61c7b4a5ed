import type { Writer } from "#core/words";
import type { PassState } from "./pass-state.ts";
import { weekOf } from "./use-by.ts";

export type UseByWarning = {
  /** which of the two warnings is due */
  readonly weeks: 4 | 1;
  /** teaching weeks that are really left, today's included */
  readonly weeksLeft: number;
  readonly sentence: string;
};

/**
 * The warning that is due on a day, at four teaching weeks and at one; null while there is more time, when nothing
 * is left, when it is paused, or when it is over. Each is sent once: the caller knows which went out.
 */
export function useByWarning(
  state: PassState,
  teachingDates: readonly string[],
  today: string,
  writer: Writer,
): UseByWarning | null {
  if (state.left === 0 || state.pausedFrom !== null || today > state.useBy) return null;
  const ahead = teachingDates.filter((date) => date >= today && date <= state.useBy);
  const weeksLeft = new Set(ahead.map(weekOf)).size;
  if (weeksLeft > 4) return null;
  return { weeks: weeksLeft > 1 ? 4 : 1, weeksLeft, sentence: sentenceOf(state, weeksLeft, writer) };
}

function sentenceOf({ left, useBy }: PassState, weeksLeft: number, writer: Writer): string {
  const classes = left === 1 ? "1 class is" : `${left} classes are`;
  const weeks = ["no teaching week", "1 teaching week"][weeksLeft] ?? `${weeksLeft} teaching weeks`;
  const main = `${classes} left on your pass, to use by ${writer.day(useBy)}: ${weeks} from now.`;
  return left > weeksLeft
    ? `${main} That is more classes than weeks; ask if you need longer.`
    : `${main} If you cannot come, ask for a pause.`;
}
