import "./floor.css";
import type { HallDocument } from "#core/hall";
import type { LengthUnits, Locale } from "#core/words";
import { useLayoutEffect, useMemo, useRef } from "react";
import { noteDrawn } from "./drag-to-drawn.ts";
import { FloorSheet } from "./floor-sheet.tsx";
import { FloorTools } from "./floor-tools.tsx";
import { soundHall } from "./sound-hall.ts";
import { useFloorEdits } from "./use-floor-edits.ts";
import { useFloorHistory } from "./use-floor-history.ts";
import { useMatPlan } from "./use-mat-plan.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

type Props = {
  readonly document: HallDocument;
  readonly onChange: (next: HallDocument) => void;
  readonly units: LengthUnits;
  readonly locale: Locale;
};

/** From an empty hall to a floor with its mats: the answer first, then the drawing, then everything as a list. */
export function FloorEditor({ document, onChange, units }: Props) {
  const floor = useFloorHistory(document, onChange);
  const edits = useFloorEdits(floor);
  const part = floor.shown;
  const editor = useRef<HTMLDivElement>(null);
  useUndoKeys(editor, floor);
  const { hall, problems } = useMemo(() => soundHall(document, part), [document, part]);
  const fitted = useMatPlan(hall);
  useLayoutEffect(() => {
    if (hall !== null && fitted.hall === hall) noteDrawn(part);
  }, [part, hall, fitted.hall]);
  return (
    <div className="floor-editor" ref={editor}>
      <FloorTools floor={floor} />
      <FloorSheet
        name={document.name}
        floor={floor}
        plan={fitted.plan}
        old={fitted.old && hall === null}
        units={units}
        setLength={edits.setLength}
        remove={edits.remove}
        openRow={() => {}}
      />
      {problems.map((it) => (
        <p key={it.code}>{it.says}</p>
      ))}
    </div>
  );
}
