import "./floor.css";
import type { Hall, HallDocument, ArrangedMatPlan } from "#core/hall";
import type { LengthUnits, Locale } from "#core/words";
import { type ComponentType, useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from "react";
import { AddThings } from "./add-things.tsx";
import { flushSync } from "react-dom";
import { noteDrawn, noteHall } from "./drag-to-drawn.ts";
import { FloorLists } from "./floor-lists.tsx";
import { FloorProblems } from "./floor-problems.tsx";
import { FloorSheet } from "./floor-sheet.tsx";
import { FloorTools } from "./floor-tools.tsx";
import { MatAnswer } from "./mat-answer.tsx";
import { PlanWords } from "./plan-words.tsx";
import { soundHall } from "./sound-hall.ts";
import { StartingShape } from "./starting-shape.tsx";
import { UsualLaying } from "./usual-laying.tsx";
import { useCalmPlan } from "./use-calm-plan.ts";
import { useFloorEdits } from "./use-floor-edits.ts";
import { type FloorHistory, useFloorHistory } from "./use-floor-history.ts";
import { useMatPlan } from "./use-mat-plan.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

export type FloorEditorProps = {
  readonly document: HallDocument;
  /** called once for every settled change; while something is dragged only the drawing follows */
  readonly onChange: (next: HallDocument) => void;
  readonly units: LengthUnits;
  readonly locale: Locale;
  /** what is asked of the plan, between the drawing and its words; the same component at every render */
  readonly Below?: ComponentType<BelowFloor>;
};

/** A sound hall with its plan, as the editor has it now. */
export type BelowFloor = {
  readonly document: HallDocument;
  readonly onChange: (next: HallDocument) => void;
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly floor: FloorHistory;
  readonly units: LengthUnits;
};

/** From an empty hall to a floor with its mats: the answer first, then the drawing, then everything as a list. */
export function FloorEditor({ document, onChange, units, Below }: FloorEditorProps) {
  const editor = useRef<HTMLDivElement>(null);
  const { live: floor, settled } = useFloorHistory(document, onChange);
  const edits = useFloorEdits(settled);
  const [beginning, setBeginning] = useState(false);
  const part = floor.shown;
  const { hall, problems } = useMemo(() => soundHall(document, part), [document, part]);
  const fitted = useMatPlan(hall, document.arrangement ?? "lines");
  // a page of words may come a moment after the mats that they tell of
  const words = useDeferredValue(fitted);
  const asked = useCalmPlan(fitted.hall, fitted.plan);
  useUndoKeys(editor, settled);
  useLayoutEffect(() => {
    if (hall !== null) noteHall(part, hall);
  }, [part, hall]);
  useLayoutEffect(() => {
    if (fitted.hall !== null) noteDrawn(fitted.hall, fitted.milliseconds);
  }, [fitted.hall, fitted.milliseconds]);

  const leaveShape = () => {
    // both pages of the editor in turn: the cursor goes to what is new, and its first words are read out
    flushSync(() => setBeginning(false));
    editor.current?.querySelector<HTMLElement>(".answer")?.focus({ preventScroll: true });
  };
  const empty = part.outline.length < 3;
  if (empty || beginning) {
    return (
      <StartingShape
        units={units}
        onDraw={(outline) => {
          floor.settle({ ...part, outline });
          leaveShape();
        }}
        onLeave={empty ? undefined : leaveShape}
      />
    );
  }
  return (
    <div className="floor-editor" ref={editor}>
      <MatAnswer document={document} fitted={fitted} sound={hall !== null} />
      <div className="floor-beside">
        <div className="stack-close floor-drawn">
          <FloorTools floor={settled} onBegin={() => setBeginning(true)} />
          <FloorSheet
            name={document.name}
            floor={floor}
            plan={fitted.plan}
            mat={fitted.hall?.mat ?? part.mat}
            old={hall === null || fitted.failure !== null}
            units={units}
            edits={edits}
          />
          <AddThings floor={settled} />
          <FloorProblems problems={problems} failure={fitted.failure} hasPlan={fitted.plan !== null} />
          <UsualLaying problems={problems} floor={settled} />
        </div>
        <FloorLists floor={settled} units={units} edits={edits} />
      </div>
      {Below !== undefined && asked !== null && (
        <Below
          document={document}
          onChange={onChange}
          hall={asked.hall}
          plan={asked.plan}
          floor={settled}
          units={units}
        />
      )}
      {words.plan !== null && words.hall !== null && (
        <PlanWords hall={words.hall} plan={words.plan} units={units} />
      )}
    </div>
  );
}
