import { isPlanningGuess, planningOf } from "#core/class";
import { passAnswer } from "#core/price";
import type { Classes } from "./pass-dates.ts";

/** A pass or a block as a class's prices have it: a suggestion for a sale, and nothing more. */
export type PassOffer = {
  readonly key: string;
  readonly form: "pass" | "block";
  readonly class: string;
  readonly size: number;
  /** decimal string */
  readonly price: string;
  /** what a single class costs, which a class taken usually counts when the rest is given back */
  readonly single: string | undefined;
  readonly className: string;
};

/** Every pass and every course in the prices of the classes, in their order. */
export function passOffers(classes: Classes): readonly PassOffer[] {
  return classes.flatMap(({ id, document }) => {
    const { passes, courses = [], single } = document.prices;
    const of = { class: id, single, className: document.name };
    return [
      ...passes.map(({ classes: size, price }) => ({ ...of, form: "pass" as const, size, price })),
      ...courses.map(({ sessions: size, price }) => ({ ...of, form: "block" as const, size, price })),
    ].map((it) => ({ ...it, key: `${it.form} ${it.size} ${id}` }));
  });
}

/** For how many teaching weeks a pass should run, by how often holders come; null where that cannot be said. */
export function weeksFor(
  size: number,
  chosen: Classes,
): { readonly weeks: number; readonly guess: boolean } | null {
  const first = chosen[0]?.document;
  if (first === undefined || size < 1) return null;
  const { attendance, confidence } = planningOf(first);
  const answer = passAnswer({ classes: size, attendance, confidence });
  if (!answer.ok) return null;
  const guess = isPlanningGuess(first, "attendance") || isPlanningGuess(first, "confidence");
  return { weeks: answer.value.json.teachingWeeks, guess };
}
