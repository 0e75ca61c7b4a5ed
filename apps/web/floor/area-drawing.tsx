import type { Polygon } from "#kernels/geometry";
import { memo, useId } from "react";
import { pointsText, type Viewport } from "./viewport.ts";

export type AreaKind = "fixture" | "movable" | "keep-clear" | "teacher";

type Props = {
  readonly kind: AreaKind;
  readonly outline: Polygon;
  readonly view: Viewport;
};

/** An area: fixtures hatched, movable ones hatched more openly, keep-clear dotted, the teacher's ruled off. */
export const AreaDrawing = memo(function AreaDrawing({ kind, outline, view }: Props) {
  const hatch = useId();
  const points = pointsText(view, outline);
  return (
    <g className={`floor-area floor-${kind}`}>
      <AreaPattern id={hatch} kind={kind} />
      <polygon className="floor-area-ground" points={points} />
      <polygon className="floor-area-fill" points={points} fill={`url(#${hatch})`} />
    </g>
  );
});

function AreaPattern({ id, kind }: { readonly id: string; readonly kind: AreaKind }) {
  const size = kind === "movable" ? 11 : 6;
  if (kind === "teacher") return null;
  return (
    <pattern
      id={id}
      width={size}
      height={size}
      patternUnits="userSpaceOnUse"
      patternTransform={kind === "keep-clear" ? "" : "rotate(45)"}
    >
      {kind === "keep-clear" ? (
        <circle className="floor-dot" cx={3} cy={3} r={0.8} />
      ) : (
        <line className="floor-hatch" x1={0} y1={0} x2={0} y2={size} />
      )}
    </pattern>
  );
}
