import type { Point } from "#kernels/geometry";

/** A dimension line with an architect's slanting tick at each end. */
export function TickLine({ from, to }: { readonly from: Point; readonly to: Point }) {
  return (
    <g className="floor-hairline">
      <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
      <Tick at={from} />
      <Tick at={to} />
    </g>
  );
}

function Tick({ at: [x, y] }: { readonly at: Point }) {
  return <line className="floor-tick" x1={x - 4} y1={y + 4} x2={x + 4} y2={y - 4} />;
}
