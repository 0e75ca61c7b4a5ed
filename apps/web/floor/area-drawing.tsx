import type { Polygon } from "#kernels/geometry";
import { memo, useId } from "react";
import { boxAround, pointsText, toPaper, type Viewport } from "./viewport.ts";

export type AreaKind = "fixture" | "movable" | "keep-clear" | "teacher";

type Props = {
  readonly kind: AreaKind;
  readonly label: string;
  readonly outline: Polygon;
  readonly view: Viewport;
};

/** A named area: fixtures hatched, movable ones hatched more openly, keep-clear dotted, the teacher's ruled off. */
export const AreaDrawing = memo(function AreaDrawing({ kind, label, outline, view }: Props) {
  const hatch = useId();
  const points = pointsText(view, outline);
  return (
    <g className={`floor-area floor-${kind}`}>
      <AreaPattern id={hatch} kind={kind} />
      <polygon className="floor-area-ground" points={points} />
      <polygon className="floor-area-fill" points={points} fill={`url(#${hatch})`} />
      <AreaLabel label={label} outline={outline} view={view} />
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

/** The label in the middle of the area, turned with a tall narrow one; left out where nobody could read it. */
function AreaLabel({ label, outline, view }: Pick<Props, "label" | "outline" | "view">) {
  const box = boxAround(outline);
  const across = (box.right - box.left) * view.scale;
  const up = (box.top - box.bottom) * view.scale;
  const [x, y] = toPaper(view, [(box.left + box.right) / 2, (box.bottom + box.top) / 2]);
  const upright = up > across && label.length * 7.5 > across;
  const fits = Math.max(across, up) >= 18 && Math.min(across, up) >= 9;
  if (!fits || label === "") return null;
  return (
    <text className="floor-label" x={x} y={y} transform={upright ? `rotate(-90 ${x} ${y})` : ""}>
      {label}
    </text>
  );
}
