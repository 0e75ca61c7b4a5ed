import type { PlacedMat } from "#core/hall";
import { memo } from "react";
import { toPaper, type Viewport } from "./viewport.ts";

type Props = { readonly mats: readonly PlacedMat[]; readonly view: Viewport };

/** The number of each mat that lies in no line, as the set-out list has it. */
export const MatNumbers = memo(function MatNumbers({ mats, view }: Props) {
  return (
    <g className="floor-mat-numbers">
      {mats.map(({ centre }, index) => {
        const [x, y] = toPaper(view, centre);
        return (
          <text key={index} className="floor-figure floor-small" x={x} y={y}>
            {index + 1}
          </text>
        );
      })}
    </g>
  );
});
