import type { FloorDraft, Mat, MatPlan, PlacedMat } from "#core/hall";
import { memo } from "react";
import { along, middle } from "./dimension-placing.ts";
import { headEnd, matCorners } from "./mat-corners.ts";
import { pointsText, toPaper, type Viewport } from "./viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly plan: MatPlan;
  readonly floor: Pick<FloorDraft, "outline" | "teacher">;
  readonly view: Viewport;
  readonly old: boolean;
};

/** Every mat to scale as a plain outline; a bar across it marks the head end. */
export const MatsDrawing = memo(function MatsDrawing({ mat, plan, floor, view, old }: Props) {
  const head = headEnd(plan.mats, floor);
  return (
    <g className={old ? "floor-mats floor-mats-old" : "floor-mats"}>
      {plan.mats.map((placed, index) => (
        <MatDrawing key={index} mat={mat} placed={placed} head={head} view={view} />
      ))}
    </g>
  );
});

function MatDrawing(props: {
  readonly mat: Mat;
  readonly placed: PlacedMat;
  readonly head: 1 | -1;
  readonly view: Viewport;
}) {
  const { mat, placed, head, view } = props;
  const turned = head === 1 ? placed : { ...placed, angle: placed.angle + 180 };
  const corners = matCorners(mat, turned);
  const [a, b, c] = corners.map((corner) => toPaper(view, corner));
  if (a === undefined || b === undefined || c === undefined) return null;
  const down = [(c[0] - b[0]) / 8, (c[1] - b[1]) / 8] as const;
  const barFrom = along(a, down, 1);
  const barTo = along(b, down, 1);
  const dot = along(middle(barFrom, barTo), down, -0.5);
  return (
    <g className="floor-mat">
      <polygon points={pointsText(view, corners)} />
      <line x1={barFrom[0]} y1={barFrom[1]} x2={barTo[0]} y2={barTo[1]} />
      <circle cx={dot[0]} cy={dot[1]} r={1.2} />
    </g>
  );
}
