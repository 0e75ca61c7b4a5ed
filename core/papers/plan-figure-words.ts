import { matsInWords, wallsOf } from "#core/hall";
import type { DrawingScale } from "./drawing-scale.ts";
import type { HallSheet } from "./hall-sheet-types.ts";
import { saidLength } from "./said-length.ts";

/** What the drawing shows, for whoever hears the paper read; where each mat lies the set-out says. */
export function planFigureWords({ hall, plan, units }: HallSheet, { says }: DrawingScale): string {
  const walls = wallsOf(hall.outline);
  const listed =
    walls.length > 24
      ? ""
      : `: ${walls.map((it) => `${it.name} ${saidLength(it.length, units)}`).join(", ")}`;
  const mats =
    plan.count === 0
      ? "no mat"
      : matsInWords(
          plan,
          plan.mats.map((_, index) => index),
        );
  return `Plan of ${hall.name} from above, scale ${says}. ${walls.length} walls${listed}. Drawn on it: ${mats}. The words of this sheet say where each lies and what else stands there.`;
}
