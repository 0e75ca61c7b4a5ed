import {
  boundsOf,
  containsPoint,
  edgeDistance,
  type Polygon,
  polygonDistance,
  rotatePolygon,
} from "#kernels/geometry";
import type { Floor, Gaps, Piece } from "./packing-types.ts";

/**
 * The plain way to the same question, kept as a witness: every line offset that is a whole number of steps
 * (millimetres) from the low edge of the floor, and in each line every whole step from the left. Exact on
 * upright floors of whole steps without a wall gap; elsewhere it can only find less than there is.
 */
export function linesByScanning(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[],
  step = 1,
): number {
  let best = 0;
  for (const axis of axes)
    for (const direction of [axis, axis + 90]) {
      const turned = turnedFloor(floor, -direction);
      best = Math.max(best, scanned(turned, piece.length, piece.width, gaps.end, gaps.side, gaps.wall, step));
      best = Math.max(best, scanned(turned, piece.width, piece.length, gaps.side, gaps.end, gaps.wall, step));
    }
  return best;
}

function turnedFloor(floor: Floor, degrees: number): Floor {
  return {
    outline: rotatePolygon(floor.outline, degrees),
    fixtures: floor.fixtures.map((fixture) => rotatePolygon(fixture, degrees)),
    keepClear: floor.keepClear.map((zone) => rotatePolygon(zone, degrees)),
  };
}

/** best[i]: the most with every line at or below offset i; a line at i adds to what lies a pitch below. */
function scanned(
  floor: Floor,
  width: number,
  height: number,
  gapAlong: number,
  gapAcross: number,
  wall: number,
  step: number,
): number {
  const { bottom, top } = boundsOf(floor.outline);
  const pitch = Math.ceil((height + gapAcross) / step - 1e-9);
  const best: number[] = [];
  for (let i = 0; bottom + i * step + height <= top + 1e-6; i++) {
    const here = inLine(floor, bottom + i * step, width, height, gapAlong, wall, step);
    best.push(Math.max(best[i - 1] ?? 0, here + (best[i - pitch] ?? 0)));
  }
  return best.at(-1) ?? 0;
}

function inLine(
  floor: Floor,
  y: number,
  width: number,
  height: number,
  gap: number,
  wall: number,
  step: number,
): number {
  const { left, right } = boundsOf(floor.outline);
  const last = Math.floor((right - left - width) / step + 1e-6);
  const pitch = Math.ceil((width + gap) / step - 1e-9);
  let count = 0;
  for (let i = 0; i <= last; ) {
    const short = missing(floor, upright(left + i * step, y, width, height), wall);
    if (short <= 0) count++;
    i += short <= 0 ? pitch : Math.max(1, Math.ceil(short / step - 1e-3));
  }
  return count;
}

/** By how much the rectangle is too near something, in millimetres: it must move at least that far. */
function missing(floor: Floor, rectangle: Polygon, wall: number): number {
  const smaller = upright(...inset(rectangle));
  const inside = smaller.every((corner) => containsPoint(floor.outline, corner));
  if (!inside || edgeDistance(floor.outline, smaller) === 0) return wall + 1e-9;
  let short = wall - 2 * HAIR - edgeDistance(floor.outline, rectangle);
  for (const fixture of floor.fixtures) {
    const covered = polygonDistance(fixture, smaller) === 0;
    short = Math.max(short, covered ? wall + 1e-9 : wall - 2 * HAIR - polygonDistance(fixture, rectangle));
  }
  return floor.keepClear.some((zone) => polygonDistance(zone, smaller) === 0) ? Math.max(short, 1e-9) : short;
}

/** What turning may cost: touching by less is not overlapping. */
const HAIR = 1e-6;

function inset(rectangle: Polygon): readonly [x: number, y: number, width: number, height: number] {
  const { left, right, bottom, top } = boundsOf(rectangle);
  return [left + HAIR, bottom + HAIR, right - left - 2 * HAIR, top - bottom - 2 * HAIR];
}

function upright(x: number, y: number, width: number, height: number): Polygon {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}
