import { renameShape, type ShapeRef } from "#core/hall";
import { useId } from "react";
import { changed } from "./handle.ts";
import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly floor: FloorHistory; readonly shape: ShapeRef };

const usual = {
  fixture: ["Stage", "Piano", "Stacked chairs", "Tables", "Pillar", "Radiator", "Cupboard"],
  keepClear: ["Fire exit", "Way to the exit", "Door", "Kitchen hatch", "Wheelchair turning place"],
} as const;

/** The name of a fixture or a zone as it is written on the drawing; the teacher's place has its name. */
export function LabelField({ floor, shape }: Props) {
  const id = useId();
  const part = floor.shown;
  if (shape.kind === "teacher" || shape.kind === "floor") return null;
  const list = shape.kind === "fixture" ? part.fixtures : part.keepClear;
  return (
    <p className="floor-name">
      <label htmlFor={id}>Name</label>
      <input
        id={id}
        className="field-box field-words"
        list={`${id}-usual`}
        value={list[shape.index]?.label ?? ""}
        onChange={(event) => {
          const next = changed(part, renameShape(part, shape, event.target.value));
          floor.settle(next, `name ${shape.kind} ${shape.index}`);
        }}
      />
      <datalist id={`${id}-usual`}>
        {usual[shape.kind].map((it) => (
          <option key={it}>{it}</option>
        ))}
      </datalist>
    </p>
  );
}
