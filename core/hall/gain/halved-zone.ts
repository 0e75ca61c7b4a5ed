import { edgesOf, type Point, type Polygon } from "#kernels/geometry";
import { snapPoint } from "../floor-snap.ts";
import { added, dot, scaled, subtracted } from "../vectors.ts";

/** The half of the zone that lies further along `way`: cut square to it at half its depth, whole millimetres. */
export function halvedZone(zone: Polygon, way: Point): { readonly outline: Polygon; readonly depth: number } {
  const places = zone.map((corner) => dot(corner, way));
  const [near, far] = [Math.min(...places), Math.max(...places)];
  const cut = (near + far) / 2;
  const kept = edgesOf(zone).flatMap(([from, to]): readonly Point[] => {
    const [a, b] = [dot(from, way) - cut, dot(to, way) - cut];
    const start = a >= 0 ? [from] : [];
    const crosses = (a < 0 && b > 0) || (a > 0 && b < 0);
    return crosses ? [...start, added(from, scaled(subtracted(to, from), a / (a - b)))] : start;
  });
  return { outline: withoutRepeats(kept.map((it) => snapPoint(it, 1))), depth: Math.round((far - near) / 2) };
}

function withoutRepeats(polygon: Polygon): Polygon {
  return polygon.filter((corner, index) => {
    const before = polygon.at(index - 1);
    return before === undefined || before[0] !== corner[0] || before[1] !== corner[1];
  });
}
