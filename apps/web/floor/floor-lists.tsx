import type { LengthUnits } from "#core/words";
import { memo, type ReactNode } from "react";
import { MatChoices } from "./mat-choices.tsx";
import { ThingList } from "./thing-list.tsx";
import type { FloorEdits } from "./use-floor-edits.ts";
import type { FloorHistory } from "./use-floor-history.ts";
import { WallList } from "./wall-list.tsx";

type Props = {
  readonly floor: FloorHistory;
  readonly units: LengthUnits;
  readonly edits: FloorEdits;
};

/** All that the drawing does, as lists and fields: the way without a drawing, and the easier one on a phone. */
export const FloorLists = memo(function FloorLists({ floor, units, edits }: Props) {
  const { fixtures, keepClear, teacher, outline } = floor.shown;
  const things = fixtures.length + keepClear.length + (teacher === null ? 0 : 1);
  return (
    <div className="floor-lists no-print">
      <Part title="Mats and gaps" open>
        <MatChoices floor={floor} units={units} />
      </Part>
      <Part title={`What stands on the floor (${things})`} id="floor-things">
        <ThingList floor={floor} units={units} />
      </Part>
      <Part title={`Walls and corners (${outline.length})`}>
        <WallList floor={floor} units={units} setLength={edits.setLength} />
      </Part>
    </div>
  );
});

function Part(props: {
  readonly title: string;
  readonly id?: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="floor-part" id={props.id} open={props.open}>
      <summary>{props.title}</summary>
      <div className="stack">{props.children}</div>
    </details>
  );
}
