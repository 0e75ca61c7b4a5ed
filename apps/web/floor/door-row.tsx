import { type Door, hangDoor, removeShape, wallsOf } from "#core/hall";
import { type LengthUnits, type Problem, problem } from "#core/words";
import { changed } from "./handle.ts";
import { LabelField } from "./label-field.tsx";
import { LengthField } from "./length-field.tsx";
import type { FloorHistory } from "./use-floor-history.ts";
import { WayOutChoice } from "./way-out-choice.tsx";

type Props = {
  readonly floor: FloorHistory;
  readonly index: number;
  readonly door: Door;
  readonly units: LengthUnits;
};

/** A door: which wall it hangs in, how far its hinge is from the wall's first corner, how wide it is, its side. */
export function DoorRow({ floor, index, door, units }: Props) {
  const part = floor.shown;
  const shape = { kind: "keepClear", index } as const;
  const walls = wallsOf(part.outline);
  const firstCorner = walls[door.wall]?.name.split("–")[0] ?? "";
  const hang = (next: Door): Problem | null => {
    const zone = hangDoor(part, next);
    if (zone === null) return tooWide(walls[next.wall]?.name ?? "");
    floor.settle({ ...part, keepClear: part.keepClear.with(index, zone) });
    return null;
  };
  return (
    <fieldset className="fields floor-thing">
      <legend>{door.label || "Door"}</legend>
      <LabelField floor={floor} shape={shape} />
      <div className="floor-thing-lengths">
        <label className="floor-length">
          <span className="field-label">In wall</span>
          <select
            className="field-box"
            value={door.wall}
            onChange={(event) => hang({ ...door, wall: Number(event.target.value) })}
          >
            {walls.map((wall, at) => (
              <option key={wall.name} value={at} disabled={wall.length < door.width}>
                {wall.name}
              </option>
            ))}
          </select>
        </label>
        <LengthField
          label={`Hinge from ${firstCorner}`}
          length={door.hingeAt}
          units={units}
          onSet={(hingeAt) => hang({ ...door, hingeAt })}
        />
        <LengthField
          label="Width"
          length={door.width}
          units={units}
          onSet={(width) => hang({ ...door, width })}
        />
        <WayOutChoice wayOut={door.wayOut} onChoose={(wayOut) => hang(marked(door, wayOut))} />
      </div>
      <div className="row">
        <button
          type="button"
          className="link-button"
          onClick={() => hang(hungOnOtherSide(door))}
          aria-label={`Hang ${door.label || "the door"} on its other side`}
        >
          Hang on the other side
        </button>
        <button
          type="button"
          className="link-button"
          aria-label={`Remove ${door.label || "the door"}`}
          onClick={() => floor.settle(changed(part, removeShape(part, shape)))}
        >
          Remove
        </button>
      </div>
    </fieldset>
  );
}

/** Nothing said, or what she knows; the hall has the last word. */
function marked(door: Door, wayOut: boolean | undefined): Door {
  const { wayOut: _, ...unsaid } = door;
  return wayOut === undefined ? unsaid : { ...door, wayOut };
}

/** The same opening with its hinge at the other end. */
function hungOnOtherSide(door: Door): Door {
  const on = door.reaches === "on";
  return {
    ...door,
    hingeAt: on ? door.hingeAt + door.width : door.hingeAt - door.width,
    reaches: on ? "back" : "on",
  };
}

function tooWide(wall: string): Problem {
  return problem(
    "door-too-wide",
    "",
    `The wall ${wall} is too short for that door.`,
    "Give a narrower door, or hang it in another wall.",
  );
}
