import type { FloorDraft, Mat, MatPlan } from "#core/hall";

import type { LengthUnits } from "#core/words";
import type { Viewport } from "./viewport.ts";
import { CornerLetters } from "./corner-letters.tsx";
import { DoorDrawing } from "./door-drawing.tsx";
import { MatDimensions } from "./mat-dimensions.tsx";
import { MatsDrawing } from "./mats-drawing.tsx";
import { OutlineDrawing } from "./outline-drawing.tsx";
import { ScaleBarDrawing } from "./scale-bar-drawing.tsx";
import { AreaDrawing } from "./area-drawing.tsx";
import { AreaLabel } from "./area-label.tsx";
import { WallDimensions } from "./wall-dimensions.tsx";

export type PlanDrawingProps = {
  readonly shape: FloorDraft;
  readonly mat: Mat;
  readonly plan: MatPlan | null;
  readonly view: Viewport;
  readonly units: LengthUnits;
  /** the plan belongs to an earlier floor: its mats are drawn grey */
  readonly old?: boolean;
};

/** Everything on the sheet, from the paper up: floor, areas, mats, walls, doors, dimensions, scale. */
export function PlanDrawing({ shape, mat, plan, view, units, old = false }: PlanDrawingProps) {
  const dimensioned = plan !== null && !old;
  return (
    <g className="floor-drawing">
      <OutlineDrawing outline={shape.outline} view={view} part="ground" />
      {shape.keepClear.map((zone, index) => (
        <AreaDrawing key={`zone ${index}`} kind="keep-clear" outline={zone.outline} view={view} />
      ))}
      {shape.teacher && <AreaDrawing kind="teacher" outline={shape.teacher.outline} view={view} />}
      {shape.fixtures.map((fixture, index) => (
        <AreaDrawing
          key={`fixture ${index}`}
          kind={fixture.movable ? "movable" : "fixture"}
          outline={fixture.outline}
          view={view}
        />
      ))}
      {plan && <MatsDrawing mat={mat} plan={plan} floor={shape} view={view} old={old} />}
      {dimensioned && <MatDimensions mat={mat} plan={plan} floor={shape} view={view} units={units} />}
      <OutlineDrawing outline={shape.outline} view={view} part="walls" />
      {shape.keepClear.map((zone, index) =>
        zone.door === undefined ? null : <DoorDrawing key={index} door={zone.door} view={view} />,
      )}
      {/* labels come after all areas and doors: one wider than its zone is still whole */}
      {namedAreas(shape).map(({ label, outline }, index) => (
        <AreaLabel key={index} label={label} outline={outline} view={view} />
      ))}
      <CornerLetters outline={shape.outline} view={view} />
      <WallDimensions outline={shape.outline} view={view} units={units} />
      <ScaleBarDrawing view={view} units={units} />
    </g>
  );
}

function namedAreas({ fixtures, keepClear, teacher }: FloorDraft) {
  return [...fixtures, ...keepClear, ...(teacher === null ? [] : [{ label: "Teacher", ...teacher }])];
}
