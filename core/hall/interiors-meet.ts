import { convexParts, type Point, type Polygon } from "#kernels/geometry";

/** Whether two simple polygons share more than edges and corners. */
export function interiorsMeet(one: Polygon, other: Polygon): boolean {
  const others = convexParts(other);
  return convexParts(one).some((part) => others.some((another) => convexInteriorsMeet(part, another)));
}

/** By separating axes: apart where, seen along some edge, one lies wholly beside the other. */
function convexInteriorsMeet(one: Polygon, other: Polygon): boolean {
  return !separates(one, one, other) && !separates(other, one, other);
}

function separates(edges: Polygon, one: Polygon, other: Polygon): boolean {
  return edges.some((from, index) => {
    const to = edges[(index + 1) % edges.length] ?? from;
    const across: Point = [from[1] - to[1], to[0] - from[0]];
    const [first, second] = [extent(one, across), extent(other, across)];
    return first.most <= second.least || second.most <= first.least;
  });
}

function extent(polygon: Polygon, [x, y]: Point): { readonly least: number; readonly most: number } {
  const places = polygon.map((corner) => corner[0] * x + corner[1] * y);
  return { least: Math.min(...places), most: Math.max(...places) };
}
