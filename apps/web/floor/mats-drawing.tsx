import type { FloorDraft, Mat, MatPlan } from "#core/hall";
import { memo } from "react";
import { matsPath } from "./mats-path.ts";
import type { Viewport } from "./viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly plan: MatPlan;
  readonly floor: Pick<FloorDraft, "outline" | "teacher">;
  readonly view: Viewport;
  readonly old: boolean;
};

/** Every mat to scale as a plain outline; a bar across it and a dot mark the head end. */
export const MatsDrawing = memo(function MatsDrawing({ mat, plan, floor, view, old }: Props) {
  const { outlines, bars, dots } = matsPath(plan, mat, floor, view);
  return (
    <g className={old ? "floor-mats floor-mats-old" : "floor-mats"} data-mats={plan.count}>
      <path className="floor-mat" d={outlines} />
      <path className="floor-mat-head" d={bars} />
      <path className="floor-mat-dot" d={dots} />
    </g>
  );
});
