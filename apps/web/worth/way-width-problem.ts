import { formatLength, type LengthUnits, type Problem, problem } from "#core/words";

/** Ways narrower than a person or wider than most halls' aisles are slips of the unit. */
const NARROWEST = 300;
const WIDEST = 5000;

/** What is wrong with a width, in millimetres, to look for; null where it can be looked for. Problem: "way-width". */
export function wayWidthProblem(width: number, units: LengthUnits): Problem | null {
  if (width >= NARROWEST && width <= WIDEST) return null;
  const [least, most] = [formatLength(NARROWEST, units), formatLength(WIDEST, units)];
  return problem(
    "way-width",
    "wayWidth",
    `A way ${formatLength(width, units)} wide was asked for.`,
    `Ask for a way from ${least} to ${most} wide.`,
  );
}
