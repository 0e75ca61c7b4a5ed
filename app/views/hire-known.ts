import type { HallDocument } from "#core/hall";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { type Missing, missing } from "./sheet-part.ts";

export type HallKnown = { readonly kind: "known"; readonly hall: HallDocument };

/** The hall when what it charges is known; else what is missing. */
export function hireKnown({ hall }: Pick<ClassSheetInput, "hall">): HallKnown | Missing {
  if (hall === null) {
    return missing("No hall is chosen yet, so what an evening costs is not known.", "Choose a hall.");
  }
  if (hall.hire !== undefined) return { kind: "known", hall };
  return missing(`What ${hall.name} charges is not known yet.`, "Enter its price an hour or a session.");
}
