import { cornerName } from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import type { TapeRead } from "./read-tape.ts";

/** Nearer than this to the beginning, a wall most likely was the last. Millimetres. */
export const BACK_WITHIN = 250;

/** How far the walk has come, said after every wall. */
export function walkWords({ walls, gap }: Pick<TapeRead, "walls" | "gap">, units: LengthUnits): string {
  const count = walls.length;
  if (count === 0) return "Begin in any corner, with the wall at your right hand.";
  if (gap === null)
    return "An angle is not known, so the sketch is a guess and the way back to A cannot be told.";
  const away = formatLength(gap, units);
  const here = cornerName(count);
  if (count >= 3 && gap <= BACK_WITHIN) {
    return `This wall ends ${away} from A, where you began. If it comes back to A, it was the last wall.`;
  }
  if (count < 2) return `One wall so far, from A to ${here}.`;
  return `${count} walls so far. From ${here} back to A it is ${away}.`;
}
