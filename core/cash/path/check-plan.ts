import type { PathQuestion } from "../money-types.ts";
import { isKept, pathChance, pathIncome } from "./path-chance.ts";
import type { PathMonth } from "./path-months.ts";

/**
 * What is wrong with a plan, in words for a developer; nothing when it is sound. Counts chances by the curve itself,
 * where the search compares quantiles.
 */
export function planFaults(
  months: readonly PathMonth[],
  question: PathQuestion,
  earliest: readonly number[],
  kept: readonly number[],
): readonly string[] {
  const all = 2 ** question.mayDrop.length - 1;
  if (kept.length !== months.length) return [`${kept.length} months for ${months.length}`];
  return kept.flatMap((set, at) => {
    const before = kept[at - 1] ?? all;
    const chance = pathChance(pathIncome(months, at, set, question), question.need);
    return [
      ...((set & ~before) === 0 ? [] : [`month ${at}: a class that went comes back`]),
      ...(set === all || chance >= question.level - 1e-9 ? [] : [`month ${at}: chance ${chance}`]),
      ...earliest.flatMap((first, one) =>
        first > at && !isKept(set, one) ? [`month ${at}: class ${one} goes before its notice`] : [],
      ),
    ];
  });
}
