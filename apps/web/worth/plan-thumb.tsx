import type { ArrangedMatPlan, Hall } from "#core/hall";
import { AreaDrawing } from "../floor/area-drawing.tsx";
import { ArrangementMarks } from "../floor/arrangement-marks.tsx";
import { MatsDrawing } from "../floor/mats-drawing.tsx";
import { OutlineDrawing } from "../floor/outline-drawing.tsx";
import { fitViewport } from "../floor/viewport.ts";

type Props = { readonly hall: Hall; readonly plan: ArrangedMatPlan; readonly width: number };

/** A small picture of a plan without figures; the row beside it says in words what it shows. */
export function PlanThumb({ hall, plan, width }: Props) {
  const view = fitViewport(hall.outline, { width, maxHeight: width * 1.5, margin: 4 });
  return (
    <svg className="plan-thumb" viewBox={`0 0 ${view.width} ${view.height}`} aria-hidden="true">
      <OutlineDrawing outline={hall.outline} view={view} part="ground" />
      {hall.keepClear.map((zone, index) => (
        <AreaDrawing key={`zone ${index}`} kind="keep-clear" outline={zone.outline} view={view} />
      ))}
      {hall.teacher && <AreaDrawing kind="teacher" outline={hall.teacher.outline} view={view} />}
      {hall.fixtures.map((fixture, index) => (
        <AreaDrawing key={`fixture ${index}`} kind="fixture" outline={fixture.outline} view={view} />
      ))}
      <ArrangementMarks plan={plan} outline={hall.outline} view={view} />
      <MatsDrawing mat={hall.mat} plan={plan} floor={hall} view={view} old={false} />
      <OutlineDrawing outline={hall.outline} view={view} part="walls" />
    </svg>
  );
}
