import type { Polygon } from "#kernels/geometry";
import { boxAround, toPaper, type Viewport } from "./viewport.ts";

type Props = { readonly label: string; readonly outline: Polygon; readonly view: Viewport };

/** The label in the middle of an area, turned with a tall narrow one; left out where nobody could read it. */
export function AreaLabel({ label, outline, view }: Props) {
  const box = boxAround(outline);
  const across = (box.right - box.left) * view.scale;
  const up = (box.top - box.bottom) * view.scale;
  const [x, y] = toPaper(view, [(box.left + box.right) / 2, (box.bottom + box.top) / 2]);
  const upright = up > across && label.length * 7.5 > across;
  const fits = Math.max(across, up) >= 18 && Math.min(across, up) >= 9;
  if (!fits || label === "") return null;
  return (
    <text className="floor-label" x={x} y={y} transform={upright ? `rotate(-90 ${x} ${y})` : ""}>
      {label}
    </text>
  );
}
