import {
  boundsOf,
  containsPoint,
  edgesOf,
  type Point,
  pointToSegment,
  type Polygon,
} from "#kernels/geometry";
import { centroidOf } from "../centroid-of.ts";
import { cornerName } from "../corner-names.ts";
import { outwardOf } from "../floor-walls.ts";
import type { Hall } from "../hall.ts";
import { type HallFrame, hallFrame, wallInWords } from "../hall-frame.ts";
import { added, cross, direction, dot, scaled, subtracted } from "../vectors.ts";
import type { CentreSetOut } from "./ring-set-out-types.ts";

/** Where the string is held, and the way that the tape came: one long, out through the wall it was measured from. */
export type RoundCentre = { readonly centre: Point; readonly front: Point; readonly setOut: CentreSetOut };

/**
 * The centre of rings, moved to whole centimetres along a wall and out from it: the wall that is most at the front
 * among those that lie straight before the centre.
 */
export function roundCentre(hall: Hall, wished: Point | undefined): RoundCentre {
  const frame = hallFrame(hall);
  const about = wished ?? (hall.teacher === null ? openestPoint(hall) : centroidOf(hall.teacher.outline));
  const wall = wallBeforeCentre(hall.outline, frame, about);
  if (wall === undefined)
    return { centre: about, front: frame.front, setOut: setOutOf(hall.outline, about, null) };
  const { front, start, along } = wallWays(hall.outline, wall);
  const across = subtracted(about, start);
  const [on, out] = [toTen(dot(across, along)), toTen(-dot(across, front))];
  const centre = added(start, added(scaled(along, on), scaled(front, -out)));
  const corner = cornerName(wall);
  const fromWall = { wall: wallInWords(hall.outline, frame, wall), corner, along: on, out };
  return { centre, front, setOut: setOutOf(hall.outline, centre, fromWall) };
}

function toTen(millimetres: number): number {
  return Math.round(millimetres / 10) * 10 + 0;
}

function wallWays(outline: Polygon, wall: number) {
  const [start = [0, 0], end = start] = [outline[wall], outline[(wall + 1) % outline.length]];
  return { front: outwardOf(outline, wall), start, along: direction(start, end) };
}

/** By its index; undefined where no wall has the point straight before it with nothing but floor between. */
function wallBeforeCentre(outline: Polygon, frame: HallFrame, about: Point): number | undefined {
  const walls = edgesOf(outline).flatMap(([from, to], wall) => {
    const along = direction(from, to);
    const on = dot(subtracted(about, from), along);
    if (on < 0 || on > Math.hypot(to[0] - from[0], to[1] - from[1])) return [];
    const foot = added(from, scaled(along, on));
    return cross(along, subtracted(about, from)) !== 0 && isSeen(outline, about, foot) ? [wall] : [];
  });
  const rank = (wall: number): number => Math.round(dot(outwardOf(outline, wall), frame.front) * 1e6);
  return walls.reduce<number | undefined>(
    (best, wall) => (best === undefined || rank(wall) > rank(best) ? wall : best),
    undefined,
  );
}

/** Looked at in a hundred places: enough to tell which wall a tape can reach. */
function isSeen(outline: Polygon, from: Point, to: Point): boolean {
  return Array.from({ length: 99 }, (_, index) => (index + 1) / 100).every((share) =>
    containsPoint(outline, added(from, scaled(subtracted(to, from), share))),
  );
}

function setOutOf(outline: Polygon, centre: Point, fromWall: CentreSetOut["fromWall"]): CentreSetOut {
  const corners = outline
    .map((at, index) => ({ at, corner: cornerName(index), distance: distance(at, centre) }))
    .filter(({ at }) => isSeen(outline, centre, at))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 2)
    .map(({ corner, distance }) => ({ corner, distance: Math.round(distance) }));
  return { fromWall, corners };
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** How finely the floor is looked at: so many places a way, and again so many around the best. */
const PLACES = 24;

/** The point of the floor furthest from every wall and from what stands on it, to a few centimetres. */
function openestPoint({ outline, fixtures }: Hall): Point {
  const shapes = [outline, ...fixtures.map((it) => it.outline)];
  const edges = shapes.flatMap(edgesOf);
  const roomAt = (at: Point): number => {
    if (!containsPoint(outline, at) || fixtures.some((it) => containsPoint(it.outline, at))) return -1;
    return Math.min(...edges.map(([from, to]) => pointToSegment(at, from, to)));
  };
  const { left, right, bottom, top } = boundsOf(outline);
  let best: Point = [(left + right) / 2, (bottom + top) / 2];
  for (let [width, depth] = [right - left, top - bottom]; Math.max(width, depth) > 20; ) {
    best = openestAround(best, width, depth, roomAt);
    width /= PLACES / 4;
    depth /= PLACES / 4;
  }
  return best;
}

/** The place itself wins ties, then the nearest to it, so that the middle of a long room is its middle. */
function openestAround(middle: Point, width: number, depth: number, roomAt: (at: Point) => number): Point {
  let [best, room, away] = [middle, roomAt(middle), 0];
  for (let column = 0; column <= PLACES; column++)
    for (let row = 0; row <= PLACES; row++) {
      const at = added(middle, [(column / PLACES - 0.5) * width, (row / PLACES - 0.5) * depth]);
      const [here, from] = [roomAt(at), distance(at, middle)];
      if (here > room + 1 || (here > room - 1 && from < away)) [best, room, away] = [at, here, from];
    }
  return best;
}
