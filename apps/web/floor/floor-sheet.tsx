import type { Mat, ArrangedMatPlan, ShapeRef } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { type KeyboardEvent, type RefObject, useId, useMemo, useRef, useState } from "react";
import { arrowStep } from "./arrow-step.ts";
import { FigureTargets } from "./figure-targets.tsx";
import { FloorHandles } from "./floor-handles.tsx";
import type { FloorPart } from "./floor-part.ts";
import { type Handle, handleKey, nudged } from "./handle.ts";
import { handleReadout } from "./handle-readout.ts";
import { LengthOver } from "./length-over.tsx";
import { openRow } from "./open-row.ts";
import { PlanDrawing } from "./plan-drawing.tsx";
import { sheetFor } from "./sheet.ts";
import { useDrag } from "./use-drag.ts";
import type { FloorEdits } from "./use-floor-edits.ts";
import type { FloorHistory } from "./use-floor-history.ts";
import { useStillPage } from "./use-still-page.ts";
import { useSheetWidth } from "./use-sheet-width.ts";
import { fitViewport } from "./viewport.ts";

type Props = {
  readonly name: string;
  readonly floor: FloorHistory;
  readonly plan: ArrangedMatPlan | null;
  /** the mat that the plan was made with */
  readonly mat: Mat;
  /** the plan belongs to an earlier floor and no newer one is coming */
  readonly old: boolean;
  readonly units: LengthUnits;
  readonly edits: FloorEdits;
};

/** The drawing that can be taken hold of. Everything done here is an operation of the floor that the core knows. */
export function FloorSheet({ name, floor, plan, mat, old, units, edits }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const hint = useId();
  const [chosen, setChosen] = useState<ShapeRef | null>(null);
  const [touched, setTouched] = useState<Handle | null>(null);
  const [typing, setTyping] = useState<number | null>(null);
  const width = useSheetWidth(frame);
  const part = floor.shown;
  const fitted = useMemo(() => fitViewport(allPoints(part), sheetFor(width)), [part, width]);
  const drag = useDrag(svg, floor, fitted);
  const view = drag.now?.view ?? fitted;
  useStillPage(svg);

  const onKey = (handle: Handle, event: KeyboardEvent) => {
    const by = arrowStep(event);
    setTouched(handle);
    if (by !== null) {
      event.preventDefault();
      floor.settle(nudged(part, handle, by), `nudge ${handleKey(handle)}`);
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      const wall = wallToType(handle);
      if (wall === null) openRow(handle.shape);
      else setTyping(wall);
    } else if (event.key === "Delete" || event.key === "Backspace") {
      event.preventDefault();
      edits.remove(handle);
      keepFocus(svg);
    } else if (event.key === "Escape") {
      drag.leave();
    }
  };

  return (
    <div className="floor-sheet" ref={frame}>
      <p className="unseen" id={hint}>
        {units === "metric"
          ? "Arrow keys move it by 1 cm, with Shift by 10 cm, with Alt by 1 m."
          : "Arrow keys move it by 1 cm (⅜ in), with Shift by 10 cm (4 in), with Alt by 1 m (3 ft 3 in)."}{" "}
        Enter opens its length, or its row in the list. Delete removes a corner or a thing.
      </p>
      <svg
        ref={svg}
        className={drag.now === null ? "floor-plan" : "floor-plan floor-dragging"}
        viewBox={`0 0 ${view.width} ${view.height}`}
        role="application"
        tabIndex={-1}
        aria-label={`Floor of ${name || "the hall"}`}
        onPointerMove={drag.move}
        onPointerUp={drag.end}
        onPointerCancel={drag.leave}
      >
        <g aria-hidden="true">
          <PlanDrawing shape={part} mat={mat} plan={plan} view={view} units={units} old={old} />
        </g>
        <FloorHandles
          part={part}
          view={view}
          units={units}
          chosen={chosen}
          hint={hint}
          onGrab={(handle, event) => {
            setTouched(handle);
            setTyping(null);
            // a refused touch gives no focus by itself
            focusHandle(handle);
            drag.start(handle, event);
          }}
          onKey={onKey}
          onChoose={setChosen}
        />
        <FigureTargets outline={part.outline} view={view} onType={setTyping} />
      </svg>
      {typing !== null && typing < part.outline.length && (
        <LengthOver
          key={typing}
          part={part}
          wall={typing}
          view={view}
          units={units}
          setLength={edits.setLength}
          onDone={() => {
            setTyping(null);
            focusHandle({ kind: "wall", shape: { kind: "floor" }, wall: typing });
          }}
        />
      )}
      <p className="floor-readout" aria-live={drag.now === null ? "polite" : "off"}>
        {touched === null
          ? "Drag a corner or a wall, or click a figure to type it."
          : handleReadout(part, touched, units)}
      </p>
    </div>
  );
}

function wallToType(handle: Handle): number | null {
  if (handle.shape.kind !== "floor") return null;
  if (handle.kind === "wall") return handle.wall;
  return handle.kind === "corner" ? handle.corner : null;
}

/** Where what had the focus is gone, the drawing takes it, so that the keys of undo still reach the editor. */
function keepFocus(svg: RefObject<SVGSVGElement | null>): void {
  requestAnimationFrame(() => {
    if (document.activeElement === document.body) svg.current?.focus({ preventScroll: true });
  });
}

function focusHandle(handle: Handle): void {
  document.getElementById(`floor-handle-${handleKey(handle)}`)?.focus({ preventScroll: true });
}

function allPoints(part: FloorPart) {
  return [
    ...part.outline,
    ...part.fixtures.flatMap((it) => it.outline),
    ...part.keepClear.flatMap((it) => it.outline),
    ...(part.teacher?.outline ?? []),
  ];
}
