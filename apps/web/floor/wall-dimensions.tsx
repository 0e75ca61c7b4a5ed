import type { Polygon } from "#kernels/geometry";
import { memo } from "react";
import { type Dimension, placeDimensions } from "./dimension-placing.ts";
import { formatLengthShort, type LengthUnits } from "#core/words";
import { TickLine } from "./tick-line.tsx";
import type { Viewport } from "./viewport.ts";

type Props = { readonly outline: Polygon; readonly view: Viewport; readonly units: LengthUnits };

/** The length of every wall outside it. */
export const WallDimensions = memo(function WallDimensions({ outline, view, units }: Props) {
  return (
    <g className="floor-dimensions">
      {placeDimensions(outline, view)
        .filter((it) => !it.crowded)
        .map((it) => (
          <WallDimension key={it.wall} dimension={it} units={units} />
        ))}
    </g>
  );
});

function WallDimension({ dimension, units }: { readonly dimension: Dimension; readonly units: LengthUnits }) {
  const [x, y] = dimension.label;
  return (
    <g>
      {dimension.hairlines.map(([from, to], index) => (
        <line key={index} className="floor-hairline" x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
      ))}
      <TickLine from={dimension.from} to={dimension.to} />
      <text className="floor-figure" x={x} y={y} transform={`rotate(${dimension.angle} ${x} ${y})`}>
        {formatLengthShort(dimension.length, units)}
      </text>
    </g>
  );
}
