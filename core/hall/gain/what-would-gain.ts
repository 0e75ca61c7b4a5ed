import type { LengthUnits } from "#core/words";
import type { Hall } from "../hall.ts";
import { changesToTry } from "./changes-to-try.ts";
import type { CountedPlan, Gain, TurnablePlan } from "./gain-types.ts";

/**
 * What each single change of `changesToTry` gains or loses, one after the other: each step of the generator solves
 * one changed hall, so that a worker can show how far it is and stop between two. The same hall gives the same list.
 * `plan` is the plan of `hall`, `planOf` makes the others and should be the one that made it.
 */
export function* whatWouldGain<Plan extends CountedPlan>(
  hall: Hall,
  plan: CountedPlan & TurnablePlan,
  planOf: (hall: Hall) => Plan,
  units: LengthUnits = "metric",
): Generator<Gain<Plan>, void, undefined> {
  for (const trial of changesToTry(hall, units, plan).trials) {
    const changed = planOf(trial.hall);
    const gain = changed.count - plan.count;
    yield { ...trial, plan: changed, gain, sentence: sentenceOf(trial.says, changed, gain) };
  }
}

/** The most gained first, equal ones in the order in which they were tried. */
export function byGain<Plan extends CountedPlan>(gains: readonly Gain<Plan>[]): readonly Gain<Plan>[] {
  return gains.toSorted((a, b) => b.gain - a.gain);
}

function sentenceOf(says: string, { count, bound, proven }: CountedPlan, gain: number): string {
  const mats = `${count} ${count === 1 ? "mat" : "mats"}`;
  const more = gain === 0 ? "no more than now" : `${Math.abs(gain)} ${gain > 0 ? "more" : "fewer"}`;
  return `${says}: ${mats}, ${more}${proven ? "" : `, perhaps up to ${bound}`}.`;
}
