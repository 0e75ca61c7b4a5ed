import { type Capacity, capacityCaution } from "#core/hall";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { missing, type SheetPart, said } from "./sheet-part.ts";

export type MatsPart = SheetPart<{ readonly capacity: Capacity }>;

/** How many people there is room for, and what limits them. */
export function matsPart(input: ClassSheetInput): MatsPart {
  const { hall, plan, capacity } = input;
  if (hall === null) {
    return missing(
      "No hall is chosen yet, so nobody knows how many mats fit.",
      "Choose a hall or measure one.",
    );
  }
  if (plan === null || capacity === null) {
    return missing(
      "The floor has not been worked out.",
      "Look at the hall’s floor plan for what stands in the way.",
    );
  }
  return { ...said(input, "mats", [capacity.sentence, capacityCaution], []), capacity };
}
