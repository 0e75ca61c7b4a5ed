// Example: a floor 8 m × 12 m on paper 360 px wide with a margin of 40 px: 280 px for 8000 mm, 0.035 px a mm.
// Invariant: this file is the only place where "up" turns round. Floors count y upwards, paper downwards.
import type { Point } from "#kernels/geometry";

export type Box = {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
};

/** A sheet of `width` × `height` px on which a floor in millimetres lies at `scale` px a millimetre. */
export type Viewport = {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** millimetres at the left edge of the sheet */
  readonly left: number;
  /** millimetres at the top edge of the sheet */
  readonly top: number;
};

export type Sheet = { readonly width: number; readonly maxHeight: number; readonly margin: number };

/** The largest scale at which all points lie inside the margins of the sheet; the sheet is no taller than needed. */
export function fitViewport(points: readonly Point[], sheet: Sheet): Viewport {
  const box = boxAround(points);
  // half a metre at least: corners dropped on top of one another must not blow the scale up
  const across = Math.max(box.right - box.left, 500);
  const up = Math.max(box.top - box.bottom, 500);
  const roomAcross = Math.max(sheet.width - 2 * sheet.margin, 40);
  const roomUp = Math.max(sheet.maxHeight - 2 * sheet.margin, 40);
  const scale = Math.min(roomAcross / across, roomUp / up);
  return {
    width: sheet.width,
    height: up * scale + 2 * sheet.margin,
    scale,
    left: (box.left + box.right) / 2 - sheet.width / (2 * scale),
    top: (box.bottom + box.top) / 2 + up / 2 + sheet.margin / scale,
  };
}

/** From millimetres on the floor (y up) to pixels on the sheet (y down). */
export function toPaper(view: Viewport, [x, y]: Point): Point {
  return [(x - view.left) * view.scale, (view.top - y) * view.scale];
}

/** From pixels on the sheet (y down) to millimetres on the floor (y up), not rounded. */
export function toFloor(view: Viewport, [x, y]: Point): Point {
  return [view.left + x / view.scale, view.top - y / view.scale];
}

/** A way on the sheet or the window, y down, as a way on the floor, y up; `reach` is millimetres a pixel. */
export function floorDelta([x, y]: Point, reach: number): Point {
  return [x * reach, 0 - y * reach];
}

export function boxAround(points: readonly Point[]): Box {
  const finite = points.filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
  if (finite.length === 0) return { left: 0, bottom: 0, right: 0, top: 0 };
  const xs = finite.map(([x]) => x);
  const ys = finite.map(([, y]) => y);
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) };
}

/** Paper points as the text of an SVG `points` attribute, to a tenth of a pixel. */
export function pointsText(view: Viewport, points: readonly Point[]): string {
  return points
    .map((point) =>
      toPaper(view, point)
        .map((value) => value.toFixed(1))
        .join(","),
    )
    .join(" ");
}
