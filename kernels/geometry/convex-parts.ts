import earcut from "earcut";
import type { Polygon } from "./point.ts";
import { edgesOf } from "./polygon-distance.ts";
import { turn } from "./segment-distance.ts";
import { anticlockwise, area } from "./signed-area.ts";

/** Convex polygons, each anticlockwise, that together cover the polygon: itself when convex, else triangles. */
export function convexParts(polygon: Polygon): readonly Polygon[] {
  if (polygon.length < 3 || area(polygon) === 0) return [];
  const turned = anticlockwise(polygon);
  return isConvex(turned) ? [turned] : triangles(turned);
}

/** For an anticlockwise polygon: it never turns right and goes round once. */
function isConvex(polygon: Polygon): boolean {
  let upwardRuns = 0;
  const edges = edgesOf(polygon);
  let rising = (edges.at(-1)?.[1][1] ?? 0) - (edges.at(-1)?.[0][1] ?? 0) > 0;
  for (const [index, [a, b]] of edges.entries()) {
    const c = polygon[(index + 2) % polygon.length] ?? b;
    if (turn(a, b, c) < 0) return false;
    if (b[1] === a[1]) continue;
    if (b[1] > a[1] && !rising) upwardRuns++;
    rising = b[1] > a[1];
  }
  return upwardRuns <= 1;
}

function triangles(polygon: Polygon): readonly Polygon[] {
  const corners = earcut(polygon.flat());
  const parts: Polygon[] = [];
  for (let at = 0; at + 2 < corners.length; at += 3) {
    const triangle = corners.slice(at, at + 3).flatMap((index) => {
      const corner = polygon[index];
      return corner === undefined ? [] : [corner];
    });
    if (area(triangle) > 0) parts.push(anticlockwise(triangle));
  }
  return parts;
}
