import { type CountModel, countAtLeast, countPmf } from "./count-model.ts";
import { type Distribution, meanOf } from "./distribution.ts";

/**
 * The distribution of min(D, capacity): what a hall of 14 sees of a demand that it cannot always take.
 * capacity + 1 chances; the last is P(D ≥ capacity). Capacity is whole, from 0.
 */
export function cappedCount(model: CountModel, capacity: number): Distribution {
  if (!Number.isInteger(capacity) || capacity < 0) throw new RangeError(`capacity: ${capacity}`);
  return Array.from({ length: capacity + 1 }, (_, count) =>
    count < capacity ? countPmf(model, count) : countAtLeast(model, capacity),
  );
}

/** E[min(D, capacity)]. */
export function expectedMinimum(model: CountModel, capacity: number): number {
  return meanOf(cappedCount(model, capacity));
}

/** E[(D − capacity)+]: turned away on average; E[D] − E[min(D, capacity)]. */
export function expectedOver(model: CountModel, capacity: number): number {
  return Math.max(0, model.mean - expectedMinimum(model, capacity));
}
