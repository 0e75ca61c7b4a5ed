import { memo } from "react";
import type { LengthUnits } from "#core/words";
import { scaleBar } from "./scale-bar.ts";
import type { Viewport } from "./viewport.ts";

/** A bar in the bottom left corner: half of it filled, as on a map. */
export const ScaleBarDrawing = memo(function ScaleBarDrawing(props: {
  readonly view: Viewport;
  readonly units: LengthUnits;
}) {
  const { view, units } = props;
  const bar = scaleBar(view.scale, view.width / 3, units);
  const y = view.height - 9;
  return (
    <g className="floor-scale">
      <rect x={4} y={y} width={bar.pixels} height={5} className="floor-scale-bar" />
      <rect x={4} y={y} width={bar.pixels / 2} height={5} className="floor-scale-half" />
      <text className="floor-figure floor-scale-says" x={bar.pixels + 10} y={y + 2.5}>
        {bar.says}
      </text>
    </g>
  );
});
