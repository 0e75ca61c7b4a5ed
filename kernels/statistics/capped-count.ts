import { type CountModel, countsBelow } from "./count-model.ts";
import { type Distribution, meanOf } from "./distribution.ts";

/**
 * The distribution of min(D, capacity): what a hall of 14 sees of a demand that it cannot always take.
 * capacity + 1 chances; the last is P(D ≥ capacity), as what is left of 1, right to 15 digits after the point. Capacity is whole, from 0.
 */
export function cappedCount(model: CountModel, capacity: number): Distribution {
  if (!Number.isInteger(capacity) || capacity < 0) throw new RangeError(`capacity: ${capacity}`);
  const below = countsBelow(model, capacity);
  const rest = 1 - below.reduce((sum, chance) => sum + chance, 0);
  return [...below, Math.max(0, rest)];
}

/** E[min(D, capacity)]. */
export function expectedMinimum(model: CountModel, capacity: number): number {
  return meanOf(cappedCount(model, capacity));
}

/** E[(D − capacity)+]: turned away on average; E[D] − E[min(D, capacity)]. */
export function expectedOver(model: CountModel, capacity: number): number {
  return Math.max(0, model.mean - expectedMinimum(model, capacity));
}
