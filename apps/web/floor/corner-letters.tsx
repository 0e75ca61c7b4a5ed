import { cornerName, outwardOf } from "#core/hall";
import type { Polygon } from "#kernels/geometry";
import { memo } from "react";
import { cornerReach } from "./corner-reach.ts";
import { toPaper, type Viewport } from "./viewport.ts";

/** The letter of each corner outside it, because the set-out figures name walls by them: "wall A–B". */
export const CornerLetters = memo(function CornerLetters(props: {
  readonly outline: Polygon;
  readonly view: Viewport;
}) {
  const { outline, view } = props;
  return (
    <g className="floor-corner-letters">
      {outline.map((corner, index) => {
        const [x, y] = toPaper(view, corner);
        const [outX, outY] = cornerOutward(outline, index);
        // letters of corners nearer than about 16 px would lie on one another
        if (cornerReach(outline, index, view) <= 7) return null;
        return (
          <text key={index} className="floor-letter" x={x + outX * 15} y={y - outY * 15}>
            {cornerName(index)}
          </text>
        );
      })}
    </g>
  );
});

/** Between the outward directions of the two walls that meet there, y up. */
function cornerOutward(outline: Polygon, corner: number): readonly [number, number] {
  const before = outwardOf(outline, (corner + outline.length - 1) % outline.length);
  const after = outwardOf(outline, corner);
  const [x, y] = [before[0] + after[0], before[1] + after[1]];
  const size = Math.hypot(x, y);
  return size < 0.01 ? after : [x / size, y / size];
}
