import type { DoorSwing } from "#core/hall";
import { memo } from "react";
import { toPaper, type Viewport } from "./viewport.ts";

/** A door as architects draw it: an opening in the wall, the leaf standing open, and the arc of its free edge. */
export const DoorDrawing = memo(function DoorDrawing(props: {
  readonly door: DoorSwing;
  readonly view: Viewport;
}) {
  const { door, view } = props;
  const hinge = toPaper(view, door.hinge);
  const closed = toPaper(view, door.closed);
  const open = toPaper(view, door.open);
  const radius = Math.hypot(closed[0] - hinge[0], closed[1] - hinge[1]);
  const turn = (closed[0] - hinge[0]) * (open[1] - hinge[1]) - (closed[1] - hinge[1]) * (open[0] - hinge[0]);
  return (
    <g className="floor-door">
      <line className="floor-opening" x1={hinge[0]} y1={hinge[1]} x2={closed[0]} y2={closed[1]} />
      <line className="floor-leaf" x1={hinge[0]} y1={hinge[1]} x2={open[0]} y2={open[1]} />
      <path
        className="floor-arc"
        d={`M ${closed[0]} ${closed[1]} A ${radius} ${radius} 0 0 ${turn > 0 ? 1 : 0} ${open[0]} ${open[1]}`}
      />
    </g>
  );
});
