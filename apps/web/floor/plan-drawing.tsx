import type { ArrangedMatPlan, FloorDraft, Mat } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { ReactNode } from "react";
import type { Viewport } from "./viewport.ts";
import { CornerLetters } from "./corner-letters.tsx";
import { DoorDrawing } from "./door-drawing.tsx";
import { MatDimensions } from "./mat-dimensions.tsx";
import { MatNumbers } from "./mat-numbers.tsx";
import { MatsDrawing } from "./mats-drawing.tsx";
import { OutlineDrawing } from "./outline-drawing.tsx";
import { ScaleBarDrawing } from "./scale-bar-drawing.tsx";
import { ArrangementMarks } from "./arrangement-marks.tsx";
import { AreaDrawing } from "./area-drawing.tsx";
import { AreaLabel } from "./area-label.tsx";
import { WallDimensions } from "./wall-dimensions.tsx";

export type PlanDrawingProps = {
  readonly shape: FloorDraft;
  readonly mat: Mat;
  readonly plan: ArrangedMatPlan | null;
  readonly view: Viewport;
  readonly units: LengthUnits;
  /** the plan belongs to an earlier floor: its mats are drawn grey */
  readonly old?: boolean;
  /** drawn on the floor under the mats */
  readonly renderBeneath?: (view: Viewport) => ReactNode;
  /** drawn over the mats */
  readonly renderAbove?: (view: Viewport) => ReactNode;
};

/** Everything on the sheet, from the paper up: floor, areas, mats, walls, doors, dimensions, scale. */
export function PlanDrawing(props: PlanDrawingProps) {
  const { shape, mat, plan, view, units, old = false, renderBeneath, renderAbove } = props;
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
      {plan && !old && <ArrangementMarks plan={plan} outline={shape.outline} view={view} />}
      {renderBeneath?.(view)}
      {plan && <MatsDrawing mat={mat} plan={plan} floor={shape} view={view} old={old} />}
      {renderAbove?.(view)}
      {plan?.arrangement === "most" && !old && <MatNumbers mats={plan.mats} view={view} />}
      {dimensioned && "setOut" in plan && (
        <MatDimensions mat={mat} plan={plan} floor={shape} view={view} units={units} />
      )}
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
  // the way of a place is told by its dots, and its whole name would be longer than it
  const zones = keepClear
    .filter((it) => it.place?.part !== "way")
    .map((it) => (it.place === undefined ? it : { ...it, label: `Place ${it.place.number}` }));
  return [...fixtures, ...zones, ...(teacher === null ? [] : [{ label: "Teacher", ...teacher }])];
}
