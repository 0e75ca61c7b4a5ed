import "./floor.css";
import type { ArrangedMatPlan, Hall } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useMemo, useRef } from "react";
import { PlanDrawing, type PlanDrawingProps } from "./plan-drawing.tsx";
import { sheetFor } from "./sheet.ts";
import { useSheetWidth } from "./use-sheet-width.ts";
import { fitViewport } from "./viewport.ts";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan | null;
  readonly units: LengthUnits;
  /** what it shows beside the plan itself: "mats that do not see the teacher are crossed" */
  readonly says?: string;
} & Pick<PlanDrawingProps, "renderBeneath" | "renderAbove">;

/** The drawing only, for a sheet or for paper; words that say the same belong beside it. */
export function PlanPicture({ hall, plan, units, says, ...layers }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useSheetWidth(frame);
  const view = useMemo(() => fitViewport(hall.outline, sheetFor(width)), [hall.outline, width]);
  const mats = plan === null ? "no mats drawn" : `${plan.count} mats`;
  return (
    <div className="floor-sheet" ref={frame}>
      <svg
        className="floor-plan"
        viewBox={`0 0 ${view.width} ${view.height}`}
        role="img"
        aria-label={`Plan of ${hall.name || "the hall"}, ${mats}${says === undefined ? "" : `; ${says}`}`}
      >
        <PlanDrawing shape={hall} mat={hall.mat} plan={plan} view={view} units={units} {...layers} />
      </svg>
    </div>
  );
}
