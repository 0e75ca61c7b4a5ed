import { edgesOf, type Point, type Polygon, signedArea } from "#kernels/geometry";

/**
 * The centre of the polygon's area: [4000, 10 750] for a strip 8 m wide from 9.5 to 12 m. Measured from its first
 * corner, so that a floor far from [0, 0] loses no millimetres. The first corner itself for a polygon of no area.
 */
export function centroidOf(polygon: Polygon): Point {
  const [from = [0, 0]] = polygon;
  const near = polygon.map(([x, y]): Point => [x - from[0], y - from[1]]);
  const six = 6 * signedArea(near);
  if (six === 0) return from;
  let [sumX, sumY] = [0, 0];
  for (const [a, b] of edgesOf(near)) {
    const twice = a[0] * b[1] - b[0] * a[1];
    sumX += (a[0] + b[0]) * twice;
    sumY += (a[1] + b[1]) * twice;
  }
  return [from[0] + sumX / six, from[1] + sumY / six];
}
