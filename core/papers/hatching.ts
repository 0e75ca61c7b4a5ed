// Example: a square of 10 mm hatched at 45° every 2 mm has strokes that begin and end on its edges.
// Invariant: every stroke lies in the shape (even-odd), whatever its form; black and white paper tells areas by it.
import { edgesOf, type Point, type Polygon, rotateAboutOrigin } from "#kernels/geometry";

/** Parallel strokes across a shape: degrees from +x, so many millimetres apart. */
export function hatching(
  shape: Polygon,
  degrees: number,
  apart: number,
): readonly (readonly [Point, Point])[] {
  const level = shape.map((corner) => rotateAboutOrigin(corner, -degrees));
  const ys = level.map(([, y]) => y);
  const [lowest, highest] = [Math.min(...ys), Math.max(...ys)];
  const strokes: (readonly [Point, Point])[] = [];
  for (let row = Math.ceil(lowest / apart); row * apart < highest; row++) {
    const y = row * apart;
    for (const [from, to] of insideSpans(level, y)) {
      strokes.push([rotateAboutOrigin([from, y], degrees), rotateAboutOrigin([to, y], degrees)]);
    }
  }
  return strokes;
}

function insideSpans(shape: Polygon, y: number): readonly (readonly [number, number])[] {
  const crossed = edgesOf(shape).flatMap(([[ax, ay], [bx, by]]) =>
    ay > y === by > y ? [] : [ax + ((y - ay) / (by - ay)) * (bx - ax)],
  );
  crossed.sort((a, b) => a - b);
  const spans: (readonly [number, number])[] = [];
  for (let at = 0; at + 1 < crossed.length; at += 2) spans.push([crossed[at] ?? 0, crossed[at + 1] ?? 0]);
  return spans;
}
