import type { Point, Polygon } from "./point.ts";

/** Turns a point anticlockwise about [0, 0] by degrees. */
export function rotateAboutOrigin(point: Point, degrees: number): Point {
  const [cosine, sine] = cosineAndSine(degrees);
  return [point[0] * cosine - point[1] * sine, point[0] * sine + point[1] * cosine];
}

export function rotatePolygon(polygon: Polygon, degrees: number): Polygon {
  const [cosine, sine] = cosineAndSine(degrees);
  return polygon.map(([x, y]) => [x * cosine - y * sine, x * sine + y * cosine] as const);
}

/** Exact for quarter turns: Math.cos(Math.PI / 2) is 6e-17, which would spoil whole millimetres. */
function cosineAndSine(degrees: number): readonly [cosine: number, sine: number] {
  const turned = ((degrees % 360) + 360) % 360;
  if (turned === 0) return [1, 0];
  if (turned === 90) return [0, 1];
  if (turned === 180) return [-1, 0];
  if (turned === 270) return [0, -1];
  const radians = (turned * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}
