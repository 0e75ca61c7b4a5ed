// Example: rings have the heads outside, so that everybody's feet are to the teacher; two banks have them at the middle.
import { type FloorDraft, type PlacedMat, type SightOptions } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { direction, headEnd } from "./mat-corners.ts";

/** Where people look who do not all look to the front. */
export type LookedAt = Pick<SightOptions, "teacher" | "heads">;

/**
 * For each mat 0 where its head lies at the end that its angle points at, 180 where at the other: towards or away from
 * the teacher where a plan is laid round her, else towards the front.
 */
export function headTurns(
  mats: readonly PlacedMat[],
  floor: Pick<FloorDraft, "outline" | "teacher">,
  { teacher, heads = "near" }: LookedAt = {},
): readonly (0 | 180)[] {
  if (teacher !== undefined) return mats.map((placed) => turnTo(placed, teacher, heads === "near"));
  const byAngle = new Map<number, 0 | 180>();
  return mats.map((placed) => {
    const known = byAngle.get(placed.angle) ?? (headEnd([placed], floor) === 1 ? 0 : 180);
    byAngle.set(placed.angle, known);
    return known;
  });
}

function turnTo({ centre, angle }: PlacedMat, teacher: Point, near: boolean): 0 | 180 {
  const [x, y] = direction(angle);
  const towards = x * (teacher[0] - centre[0]) + y * (teacher[1] - centre[1]) >= 0;
  return towards === near ? 0 : 180;
}
