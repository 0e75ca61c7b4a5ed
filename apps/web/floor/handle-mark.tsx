import { outwardOf } from "#core/hall";
import type { Polygon } from "#kernels/geometry";
import { middle } from "./dimension-placing.ts";
import type { Handle } from "./handle.ts";
import { cornerReach } from "./corner-reach.ts";
import { boxAround, pointsText, toPaper, type Viewport } from "./viewport.ts";

type Props = { readonly handle: Handle; readonly outline: Polygon; readonly view: Viewport };

/** The mark of a handle and the larger, unseen ground on which a finger may land: 44 px for a corner. */
export function HandleMark({ handle, outline, view }: Props) {
  switch (handle.kind) {
    case "corner":
      return <CornerMark handle={handle} outline={outline} view={view} />;
    case "wall":
      return <WallMark handle={handle} outline={outline} view={view} />;
    case "shape":
      return <polygon className="floor-hit floor-hit-area" points={pointsText(view, outline)} />;
  }
}

function CornerMark({
  handle,
  outline,
  view,
}: Props & { readonly handle: Extract<Handle, { kind: "corner" }> }) {
  const [x, y] = toPaper(view, outline[handle.corner] ?? [0, 0]);
  const reach = cornerReach(outline, handle.corner, view);
  return (
    <>
      <circle className="floor-hit" cx={x} cy={y} r={reach} />
      <circle className="floor-mark" cx={x} cy={y} r={reach > 7 ? 6 : 3} />
    </>
  );
}

function WallMark({ handle, outline, view }: Props & { readonly handle: Extract<Handle, { kind: "wall" }> }) {
  const from = toPaper(view, outline[handle.wall] ?? [0, 0]);
  const to = toPaper(view, outline[(handle.wall + 1) % outline.length] ?? [0, 0]);
  const [x, y] = middle(from, to);
  const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  // no longer than half of a short wall, so that corners stay free
  const long = Math.min(18, Math.hypot(to[0] - from[0], to[1] - from[1]) / 2);
  const { thick, out } = wallGround(handle, outline, view);
  return (
    <>
      <line
        className="floor-hit"
        x1={from[0] + out[0]}
        y1={from[1] + out[1]}
        x2={to[0] + out[0]}
        y2={to[1] + out[1]}
        strokeWidth={thick}
      />
      <rect
        className="floor-mark"
        x={x - long / 2}
        y={y - 3}
        width={long}
        height={6}
        transform={`rotate(${angle} ${x} ${y})`}
      />
    </>
  );
}

/**
 * A wall of the floor is hit 17 px outside and 5 px inside, where a radiator may stand against it; the side of a
 * thing on the floor up to 10 px on either side, but no more than an eighth of it, so that its middle moves it.
 */
function wallGround(handle: Extract<Handle, { kind: "wall" }>, outline: Polygon, view: Viewport) {
  if (handle.shape.kind === "floor") {
    const [x, y] = outwardOf(outline, handle.wall);
    return { thick: 22, out: [6 * x, -6 * y] as const };
  }
  const box = boxAround(outline);
  const least = Math.min(box.right - box.left, box.top - box.bottom) * view.scale;
  return { thick: Math.min(20, Math.max(6, least / 4)), out: [0, 0] as const };
}
