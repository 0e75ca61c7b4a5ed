import { type ArrangedMatPlan, type FloorDraft, type Mat, sightOptions } from "#core/hall";
import { memo } from "react";
import { matsPath } from "./mats-path.ts";
import type { Viewport } from "./viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly plan: ArrangedMatPlan;
  readonly floor: Pick<FloorDraft, "outline" | "teacher">;
  readonly view: Viewport;
  readonly old: boolean;
};

/** Every mat to scale as a plain outline; a bar across it and a dot mark the head end. */
export const MatsDrawing = memo(function MatsDrawing({ mat, plan, floor, view, old }: Props) {
  const drawn = { mats: plan.mats, lookedAt: sightOptions(plan) };
  const { outlines, bars, dots } = matsPath(drawn, mat, floor, view);
  return (
    <g className={old ? "floor-mats floor-mats-old" : "floor-mats"} data-mats={plan.count}>
      <path className="floor-mat" d={outlines} />
      <path className="floor-mat-head" d={bars} />
      <path className="floor-mat-dot" d={dots} />
    </g>
  );
});
