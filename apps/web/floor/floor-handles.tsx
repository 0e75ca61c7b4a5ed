import { outlineOf, type ShapeRef } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { KeyboardEvent, PointerEvent } from "react";
import type { FloorPart } from "./floor-part.ts";
import { type Handle, handleKey } from "./handle.ts";
import { handleName } from "./handle-name.ts";
import { HandleMark } from "./handle-mark.tsx";
import type { Viewport } from "./viewport.ts";

type Props = {
  readonly part: FloorPart;
  readonly view: Viewport;
  readonly units: LengthUnits;
  /** the shape whose sides can be drawn out, because it was touched last */
  readonly chosen: ShapeRef | null;
  readonly hint: string;
  readonly onGrab: (handle: Handle, event: PointerEvent) => void;
  readonly onKey: (handle: Handle, event: KeyboardEvent) => void;
  readonly onChoose: (shape: ShapeRef) => void;
};

/** Everything on the drawing that can be taken hold of, by hand or by key; areas below walls below corners. */
export function FloorHandles(props: Props) {
  const { part, view, units, hint, onGrab, onKey, onChoose } = props;
  return (
    <g className="floor-handles">
      {handlesOf(part, props.chosen).map((handle) => (
        <g
          key={handleKey(handle)}
          id={`floor-handle-${handleKey(handle)}`}
          className={`floor-handle floor-handle-${handle.kind}`}
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there are no buttons inside an svg
          role="button"
          tabIndex={0}
          aria-label={handleName(part, handle, units)}
          aria-describedby={hint}
          onPointerDown={(event) => onGrab(handle, event)}
          onKeyDown={(event) => onKey(handle, event)}
          onFocus={() => onChoose(handle.shape)}
        >
          <HandleMark handle={handle} outline={outlineOf(part, handle.shape)} view={view} />
        </g>
      ))}
    </g>
  );
}

const floorShape: ShapeRef = { kind: "floor" };

function handlesOf(part: FloorPart, chosen: ShapeRef | null): readonly Handle[] {
  const shapes: readonly ShapeRef[] = [
    ...(part.teacher === null ? [] : [{ kind: "teacher" } as const]),
    ...part.keepClear.map((_, index) => ({ kind: "keepClear", index }) as const),
    ...part.fixtures.map((_, index) => ({ kind: "fixture", index }) as const),
  ];
  return [
    ...shapes.flatMap((shape) => areaHandles(part, shape, chosen)),
    ...part.outline.map((_, wall) => ({ kind: "wall", shape: floorShape, wall }) as const),
    ...part.outline.map((_, corner) => ({ kind: "corner", shape: floorShape, corner }) as const),
  ];
}

function areaHandles(part: FloorPart, shape: ShapeRef, chosen: ShapeRef | null): readonly Handle[] {
  const whole = { kind: "shape", shape } as const;
  if (chosen === null || !sameShape(shape, chosen) || isDoor(part, shape)) return [whole];
  const sides = outlineOf(part, shape).map((_, wall) => ({ kind: "wall", shape, wall }) as const);
  return [whole, ...sides];
}

export function sameShape(a: ShapeRef, b: ShapeRef): boolean {
  return a.kind === b.kind && (!("index" in a) || ("index" in b && a.index === b.index));
}

/** A door keeps its size while it is drawn along; its width is typed in the list. */
function isDoor(part: FloorPart, shape: ShapeRef): boolean {
  return shape.kind === "keepClear" && part.keepClear[shape.index]?.door !== undefined;
}
