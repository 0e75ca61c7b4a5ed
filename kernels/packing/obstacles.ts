import {
  area,
  boundsOf,
  convexParts,
  edgesOf,
  hullAndPockets,
  type Polygon,
  rotatePolygon,
} from "#kernels/geometry";
import type { Floor } from "./packing-types.ts";

/** A convex polygon that rectangles keep a distance from; at distance 0 they may touch it. */
export type Obstacle = { readonly polygon: Polygon; readonly distance: number };

/**
 * The obstacles of one frame as flat arrays, so that the inner loop makes nothing. Edges of obstacle i:
 * rising ones (its right side) from start[i] to middle[i], falling ones (its left side) to start[i + 1].
 */
export type Obstacles = {
  readonly count: number;
  readonly distance: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly start: Int32Array;
  readonly middle: Int32Array;
  /** per edge: lowest and highest y, x at the lowest, dx/dy */
  readonly bottom: Float64Array;
  readonly top: Float64Array;
  readonly x: Float64Array;
  readonly slope: Float64Array;
  /** per edge: where a disc rolling along it reaches furthest, measured down from the strip or up from it */
  readonly shift: Float64Array;
  readonly fromBelow: Uint8Array;
};

/** What a rectangle must keep off: the sides of the hull, and all shapes else, cut into convex obstacles. */
export type Surroundings = {
  readonly hull: Polygon;
  readonly shapes: readonly Polygon[];
  readonly obstacles: readonly Obstacle[];
};

export function surroundingsOf(floor: Floor, wall: number): Surroundings {
  const { hull, pockets } = hullAndPockets(floor.outline);
  const solid = [...pockets, ...floor.fixtures].flatMap(solidParts);
  const obstacles = [
    ...solid.map((polygon) => ({ polygon, distance: wall })),
    ...floor.keepClear.flatMap(convexParts).map((polygon) => ({ polygon, distance: 0 })),
  ];
  return { hull, shapes: [...pockets, ...floor.fixtures, ...floor.keepClear], obstacles };
}

/** Parts of a shape; one whose parts do not add up to it (a sliver, or lines that cross) keeps its edges too. */
function solidParts(shape: Polygon): readonly Polygon[] {
  const parts = convexParts(shape);
  const covered = parts.reduce((sum, part) => sum + area(part), 0);
  const whole = covered > 0 && Math.abs(covered - area(shape)) <= 1e-9 * covered;
  return whole ? parts : [...parts, ...edgesOf(shape)];
}

/** The obstacles turned by −degrees, so that lines in that direction run along x. */
export function obstaclesInFrame(obstacles: readonly Obstacle[], degrees: number): Obstacles {
  const sides = obstacles.map(({ polygon, distance }) => sidesOf(rotatePolygon(polygon, -degrees), distance));
  const flat = emptyObstacles(
    obstacles.length,
    sides.reduce((sum, each) => sum + each.right.length + each.left.length, 0),
  );
  let edge = 0;
  for (const [index, { right, left, low, high }] of sides.entries()) {
    flat.distance[index] = obstacles[index]?.distance ?? 0;
    flat.low[index] = low;
    flat.high[index] = high;
    flat.start[index] = edge;
    for (const side of right) writeEdge(flat, edge++, side);
    flat.middle[index] = edge;
    for (const side of left) writeEdge(flat, edge++, side);
  }
  flat.start[obstacles.length] = edge;
  return flat;
}

type Side = {
  readonly bottom: number;
  readonly top: number;
  readonly x: number;
  readonly slope: number;
  readonly shift: number;
  readonly fromBelow: boolean;
};

type Sides = {
  readonly right: Side[];
  readonly left: Side[];
  readonly low: number;
  readonly high: number;
  readonly leftmost: number;
  readonly rightmost: number;
};

/** Below this rise an edge is level: its ends stand on its neighbours too. */
const LEVEL = 1e-9;

function sidesOf(polygon: Polygon, distance: number): Sides {
  const { bottom: low, top: high, left: leftmost, right: rightmost } = boundsOf(polygon);
  const sides: Sides = { right: [], left: [], low, high, leftmost, rightmost };
  for (const [[ax, ay], [bx, by]] of edgesOf(polygon)) {
    const [dx, dy] = [bx - ax, by - ay];
    if (Math.abs(dy) < LEVEL) continue;
    const slope = dx / dy;
    const shift = (distance * Math.abs(dx)) / Math.hypot(dx, dy);
    const rises = dy > 0;
    const fromBelow = rises ? slope <= 0 : slope >= 0;
    const side = {
      bottom: Math.min(ay, by),
      top: Math.max(ay, by),
      x: rises ? ax : bx,
      slope,
      shift,
      fromBelow,
    };
    (rises ? sides.right : sides.left).push(side);
  }
  if (sides.right.length === 0) addLevelEnds(sides);
  return sides;
}

/** A level segment has no sides: its two ends stand for them. */
function addLevelEnds(sides: Sides): void {
  const end = { bottom: sides.low, top: sides.low, slope: 0, shift: 0, fromBelow: true };
  sides.right.push({ ...end, x: sides.rightmost });
  sides.left.push({ ...end, x: sides.leftmost });
}

function emptyObstacles(count: number, edges: number): Obstacles {
  return {
    count,
    distance: new Float64Array(count),
    low: new Float64Array(count),
    high: new Float64Array(count),
    start: new Int32Array(count + 1),
    middle: new Int32Array(count),
    bottom: new Float64Array(edges),
    top: new Float64Array(edges),
    x: new Float64Array(edges),
    slope: new Float64Array(edges),
    shift: new Float64Array(edges),
    fromBelow: new Uint8Array(edges),
  };
}

function writeEdge(flat: Obstacles, at: number, side: Side): void {
  flat.bottom[at] = side.bottom;
  flat.top[at] = side.top;
  flat.x[at] = side.x;
  flat.slope[at] = side.slope;
  flat.shift[at] = side.shift;
  flat.fromBelow[at] = side.fromBelow ? 1 : 0;
}
