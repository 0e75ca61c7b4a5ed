import { addCorner, cornersOf, moveCorner, removeCorner, wallsOf } from "#core/hall";
import type { LengthUnits, Millimetres, Problem } from "#core/words";
import { changed } from "./handle.ts";
import { LengthField } from "./length-field.tsx";
import type { FloorHistory } from "./use-floor-history.ts";

type Props = {
  readonly floor: FloorHistory;
  readonly units: LengthUnits;
  readonly setLength: (wall: number, length: Millimetres) => Problem | null;
};

const shape = { kind: "floor" } as const;

/** Every wall and corner as a table: the same floor without the drawing. */
export function WallList({ floor, units, setLength }: Props) {
  const part = floor.shown;
  return (
    <>
      <table className="floor-table">
        <caption>Walls</caption>
        <thead>
          <tr>
            <th scope="col">Wall</th>
            <th scope="col">Length</th>
            <th scope="col">Change</th>
          </tr>
        </thead>
        <tbody>
          {wallsOf(part.outline).map((wall, index) => (
            <tr key={index}>
              <th scope="row">{wall.name}</th>
              <td>
                <LengthField
                  label={`Length of wall ${wall.name}`}
                  quiet
                  length={wall.length}
                  units={units}
                  onSet={(length) => setLength(index, length)}
                />
              </td>
              <td>
                <button
                  type="button"
                  className="link-button"
                  aria-label={`New corner in wall ${wall.name}`}
                  onClick={() => floor.settle(changed(part, addCorner(part, shape, index)))}
                >
                  New corner
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <CornerTable floor={floor} units={units} />
    </>
  );
}

/** Corners by their place: across from the left and up from the bottom of where the first one was drawn. */
function CornerTable({ floor, units }: Pick<Props, "floor" | "units">) {
  const part = floor.shown;
  const place = (index: number, at: readonly [number, number]) => {
    floor.settle(changed(part, moveCorner(part, shape, index, at)));
    return null;
  };
  return (
    <table className="floor-table">
      <caption>Corners</caption>
      <thead>
        <tr>
          <th scope="col">Corner</th>
          <th scope="col">Across</th>
          <th scope="col">Up</th>
          <th scope="col">Change</th>
        </tr>
      </thead>
      <tbody>
        {cornersOf(part.outline).map(({ name, at }, index) => (
          <tr key={index}>
            <th scope="row">{name}</th>
            <td>
              <LengthField
                label={`Corner ${name} across`}
                quiet
                signed
                length={at[0]}
                units={units}
                onSet={(x) => place(index, [x, at[1]])}
              />
            </td>
            <td>
              <LengthField
                label={`Corner ${name} up`}
                quiet
                signed
                length={at[1]}
                units={units}
                onSet={(y) => place(index, [at[0], y])}
              />
            </td>
            <td>
              <button
                type="button"
                className="link-button"
                aria-label={`Remove corner ${name}`}
                disabled={part.outline.length <= 3}
                onClick={() => floor.settle(changed(part, removeCorner(part, shape, index)))}
              >
                Remove
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
