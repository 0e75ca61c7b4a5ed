import { wallName } from "#core/hall";
import type { LengthUnits, Millimetres, Problem } from "#core/words";
import { placeDimensions } from "./dimension-placing.ts";
import type { FloorPart } from "./floor-part.ts";
import { wallLength } from "./handle-name.ts";
import { LengthField } from "./length-field.tsx";
import type { Viewport } from "./viewport.ts";

type Props = {
  readonly part: FloorPart;
  readonly wall: number;
  readonly view: Viewport;
  readonly units: LengthUnits;
  readonly setLength: (wall: number, length: Millimetres) => Problem | null;
  readonly onDone: () => void;
};

/** A field in the place of a wall's figure, kept inside the sheet at its edges. */
export function LengthOver({ part, wall, view, units, setLength, onDone }: Props) {
  const at = placeDimensions(part.outline, view)[wall]?.label ?? [0, 0];
  // the field is about 130 px wide: half of that from either edge
  const left = Math.min(Math.max(at[0], 68), view.width - 68) / view.width;
  return (
    <div
      className="floor-length-over"
      style={{ left: `${left * 100}%`, top: `${(at[1] / view.width) * 100}cqw` }}
    >
      <LengthField
        label={`Wall ${wallName(part.outline, wall)}`}
        quiet
        focused
        length={wallLength(part, { kind: "floor" }, wall)}
        units={units}
        onSet={(length) => setLength(wall, length)}
        onDone={onDone}
      />
    </div>
  );
}
