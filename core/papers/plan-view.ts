import { boundsOf, edgesOf, type Point, type Polygon } from "#kernels/geometry";

/** Where a floor in millimetres, y up, lies on a paper in millimetres, y down. */
export type PlanView = {
  /** millimetres of hall to one of paper */
  readonly ratio: number;
  /** on the paper, of the top left corner of the floor's bounds */
  readonly left: number;
  readonly top: number;
  /** of the floor's bounds, in the hall */
  readonly hallLeft: number;
  readonly hallTop: number;
};

/** The floor's bounds, how wide and how high they are on the paper. */
export function planExtent(
  outline: Polygon,
  ratio: number,
): { readonly width: number; readonly height: number } {
  const { left, right, top, bottom } = boundsOf(outline);
  return { width: (right - left) / ratio, height: (top - bottom) / ratio };
}

export function planView(outline: Polygon, ratio: number, [left, top]: Point): PlanView {
  const bounds = boundsOf(outline);
  return { ratio, left, top, hallLeft: bounds.left, hallTop: bounds.top };
}

export function onPaper(view: PlanView, [x, y]: Point): Point {
  return [view.left + (x - view.hallLeft) / view.ratio, view.top + (view.hallTop - y) / view.ratio];
}

export function shapeOnPaper(view: PlanView, shape: Polygon): Polygon {
  return shape.map((point) => onPaper(view, point));
}

/**
 * A shape on the paper, cut off so many millimetres beyond the floor's bounds: a stage may stand half outside the
 * walls that were drawn. Empty for one that lies outside altogether.
 */
export function cutShape(view: PlanView, outline: Polygon, shape: Polygon, beyond: number): Polygon {
  const { width, height } = planExtent(outline, view.ratio);
  const edges = [
    { axis: 0, at: view.left - beyond, sign: 1 },
    { axis: 0, at: view.left + width + beyond, sign: -1 },
    { axis: 1, at: view.top - beyond, sign: 1 },
    { axis: 1, at: view.top + height + beyond, sign: -1 },
  ] as const;
  return edges.reduce<Polygon>(
    (kept, { axis, at, sign }) => cutAt(kept, (point) => (point[axis] - at) * sign),
    shapeOnPaper(view, shape),
  );
}

/** What of a polygon lies where `inside` is not below nothing; the function grows evenly along a line. */
function cutAt(shape: Polygon, inside: (point: Point) => number): Polygon {
  return edgesOf(shape).flatMap(([from, to]): Polygon => {
    const [a, b] = [inside(from), inside(to)];
    const crossing: Point = [
      from[0] + (to[0] - from[0]) * (a / (a - b)),
      from[1] + (to[1] - from[1]) * (a / (a - b)),
    ];
    const kept = a >= 0 ? [from] : [];
    return a >= 0 === b >= 0 ? kept : [...kept, crossing];
  });
}

/** Half way between. */
export function middleOf(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** So many millimetres from a point along a way that is one long. */
export function stepped([x, y]: Point, way: Point, by: number): Point {
  return [x + way[0] * by, y + way[1] * by];
}

/** One long, from one point to another; none where they are the same. */
export function wayBetween(from: Point, to: Point): Point {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(x, y);
  return length === 0 ? [0, 0] : [x / length, y / length];
}
