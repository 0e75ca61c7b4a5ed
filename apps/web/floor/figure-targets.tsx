import type { Polygon } from "#kernels/geometry";
import { placeDimensions } from "./dimension-placing.ts";
import type { Viewport } from "./viewport.ts";

type Props = {
  readonly outline: Polygon;
  readonly view: Viewport;
  readonly onType: (wall: number) => void;
};

/** The ground under each figure that opens it for typing; by keyboard the wall itself does that with Enter. */
export function FigureTargets({ outline, view, onType }: Props) {
  return (
    <g aria-hidden="true">
      {placeDimensions(outline, view)
        .filter((it) => !it.crowded)
        .map(({ wall, label: [x, y], angle }) => (
          <rect
            key={wall}
            className="floor-figure-hit"
            x={x - 28}
            y={y - 12}
            width={56}
            height={24}
            transform={`rotate(${angle} ${x} ${y})`}
            onClick={() => onType(wall)}
          />
        ))}
    </g>
  );
}
