// Example: a mat of 1.80 × 0.60 m at 0.1 px a millimetre is "M…L…L…L…Z" of 180 × 60 px, its bar an eighth from the head.
// Invariant: all mats are three paths, whether there are ten or three hundred: a drag redraws three elements.
import type { FloorDraft, Mat, PlacedMat } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { headTurns, type LookedAt } from "./head-turns.ts";
import { matCorners } from "./mat-corners.ts";
import { toPaper, type Viewport } from "./viewport.ts";

export type MatsPath = {
  /** the outlines */
  readonly outlines: string;
  /** across each mat near its head */
  readonly bars: string;
  /** a dot at the middle of each head end, as a line of no length */
  readonly dots: string;
};

/** Mats, and where people look who do not look to the front. */
export type DrawnMats = { readonly mats: readonly PlacedMat[]; readonly lookedAt?: LookedAt };

/** The text of the paths that draw a plan, in pixels to a tenth. */
export function matsPath(
  { mats, ...plan }: DrawnMats,
  mat: Mat,
  floor: Pick<FloorDraft, "outline" | "teacher">,
  view: Viewport,
): MatsPath {
  const turns = headTurns(mats, floor, plan.lookedAt);
  const drawn = mats.map((placed, index) => {
    const corners = matCorners(mat, { ...placed, angle: placed.angle + (turns[index] ?? 0) });
    return matPath(corners.map((corner) => toPaper(view, corner)));
  });
  return {
    outlines: drawn.map((it) => it.outline).join(""),
    bars: drawn.map((it) => it.bar).join(""),
    dots: drawn.map((it) => it.dot).join(""),
  };
}

/** One mat from its corners on paper, the first two at the head. */
function matPath(corners: readonly Point[]) {
  const [a = origin, b = origin, c = origin, d = origin] = corners;
  const dot = at(towards(towards(a, b, 0.5), towards(d, c, 0.5), 1 / 16));
  return {
    outline: `M${at(a)}L${at(b)}L${at(c)}L${at(d)}Z`,
    bar: `M${at(towards(a, d, 1 / 8))}L${at(towards(b, c, 1 / 8))}`,
    dot: `M${dot}L${dot}`,
  };
}

const origin: Point = [0, 0];

function towards(from: Point, to: Point, share: number): Point {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}

function at([x, y]: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
