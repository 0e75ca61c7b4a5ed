import type { LengthUnits } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import { CornerLetters } from "./corner-letters.tsx";
import { OutlineDrawing } from "./outline-drawing.tsx";
import { fitViewport } from "./viewport.ts";
import { WallDimensions } from "./wall-dimensions.tsx";

type Props = { readonly outline: Polygon; readonly units: LengthUnits };

/** Walls and their lengths only, while they are entered. */
export function OutlinePreview({ outline, units }: Props) {
  const view = fitViewport(outline, { width: 360, maxHeight: 320, margin: 44 });
  return (
    <svg
      className="floor-plan floor-preview"
      viewBox={`0 0 ${view.width} ${view.height}`}
      role="img"
      aria-label={`The floor so far, ${outline.length} walls`}
    >
      <OutlineDrawing outline={outline} view={view} part="ground" />
      <OutlineDrawing outline={outline} view={view} part="walls" />
      <CornerLetters outline={outline} view={view} />
      <WallDimensions outline={outline} view={view} units={units} />
    </svg>
  );
}
