import type { ShapeRef } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { DoorRow } from "./door-row.tsx";
import { doorOf } from "./door-of.ts";
import { ThingRow } from "./thing-row.tsx";
import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly floor: FloorHistory; readonly units: LengthUnits };

/** Everything that stands on the floor or is kept clear, each with its place and size: as good as the drawing. */
export function ThingList({ floor, units }: Props) {
  const part = floor.shown;
  const shapes: readonly ShapeRef[] = [
    ...part.fixtures.map((_, index) => ({ kind: "fixture", index }) as const),
    ...part.keepClear.map((_, index) => ({ kind: "keepClear", index }) as const),
    ...(part.teacher === null ? [] : [{ kind: "teacher" } as const]),
  ];
  return (
    <div className="stack">
      {shapes.length === 0 && (
        <p className="soft">Nothing stands on this floor yet: no stage, no piano, no doors.</p>
      )}
      {shapes.length > 0 && (
        <p className="small soft">
          Across is counted from the left and up from the bottom, both from where the first corner was first
          drawn.
        </p>
      )}
      <ul className="list-plain ledger">
        {shapes.map((shape) => {
          const door = doorOf(part, shape);
          return (
            <li key={rowId(shape)} id={rowId(shape)}>
              {door === null ? (
                <ThingRow floor={floor} shape={shape} units={units} />
              ) : (
                <DoorRow floor={floor} index={door.index} door={door.door} units={units} />
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** The row of a shape on the page, for Enter on its drawing. */
export function rowId(shape: ShapeRef): string {
  return "index" in shape ? `floor-row-${shape.kind}-${shape.index}` : `floor-row-${shape.kind}`;
}
