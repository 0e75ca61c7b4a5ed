import { moveShape, outlineOf, removeShape, resizeShape, setMovable, type ShapeRef } from "#core/hall";
import { type LengthUnits, type Millimetres, type Problem, problem } from "#core/words";
import { changed } from "./handle.ts";
import { shapeLabel } from "./handle-name.ts";
import { LabelField } from "./label-field.tsx";
import { LengthField } from "./length-field.tsx";
import type { FloorHistory } from "./use-floor-history.ts";
import { boxAround } from "./viewport.ts";

type Props = { readonly floor: FloorHistory; readonly shape: ShapeRef; readonly units: LengthUnits };

/** A fixture, a zone or the teacher's place: its name, how far across and up it stands, its size. */
export function ThingRow({ floor, shape, units }: Props) {
  const part = floor.shown;
  const box = boxAround(outlineOf(part, shape));
  const name = shapeLabel(part, shape);
  const [width, depth] = [box.right - box.left, box.top - box.bottom];
  const move = (x: number, y: number) => {
    floor.settle(changed(part, moveShape(part, shape, [x, y])));
    return null;
  };
  const resize = (wide: number, deep: number): Problem | null => {
    if (Math.min(wide, deep) < 10) return tooSmall(name);
    floor.settle(changed(part, resizeShape(part, shape, wide, deep)));
    return null;
  };
  const fields = [
    ["Across", box.left, true, (to: Millimetres) => move(to - box.left, 0)],
    ["Up", box.bottom, true, (to: Millimetres) => move(0, to - box.bottom)],
    ["Width", width, false, (to: Millimetres) => resize(to, depth)],
    ["Depth", depth, false, (to: Millimetres) => resize(width, to)],
  ] as const;
  return (
    <fieldset className="fields floor-thing">
      <legend>{name}</legend>
      <LabelField floor={floor} shape={shape} />
      <div className="floor-thing-lengths">
        {fields.map(([word, length, signed, onSet]) => (
          <LengthField key={word} label={word} length={length} signed={signed} units={units} onSet={onSet} />
        ))}
      </div>
      <div className="row">
        {shape.kind === "fixture" && (
          <label className="row">
            <input
              type="checkbox"
              checked={part.fixtures[shape.index]?.movable ?? false}
              onChange={(event) =>
                floor.settle(changed(part, setMovable(part, shape.index, event.target.checked)))
              }
            />
            can be moved
          </label>
        )}
        <button
          type="button"
          className="link-button"
          aria-label={`Remove ${name}`}
          onClick={() => floor.settle(changed(part, removeShape(part, shape)))}
        >
          Remove
        </button>
      </div>
    </fieldset>
  );
}

function tooSmall(name: string): Problem {
  return problem(
    "shape-too-small",
    "",
    `${name} is at least 1 cm wide and deep.`,
    "Give its size, or remove it.",
  );
}
