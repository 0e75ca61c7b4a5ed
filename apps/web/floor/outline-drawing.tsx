import type { Polygon } from "#kernels/geometry";
import { memo } from "react";
import { pointsText, type Viewport } from "./viewport.ts";

type Props = { readonly outline: Polygon; readonly view: Viewport; readonly part: "ground" | "walls" };

/** The floor's paper, or its walls; walls are drawn after what stands on the floor. */
export const OutlineDrawing = memo(function OutlineDrawing({ outline, view, part }: Props) {
  return <polygon className={`floor-${part}`} points={pointsText(view, outline)} />;
});
