import { edgesOf, type Polygon } from "#kernels/geometry";
import { SHRINK } from "./forbidden-spans.ts";

/**
 * The sides of the convex hull as limits on the left edge x of a rectangle whose lower edge is at y:
 * x ≥ at + slope·y for the first `lefts`, x ≤ at + slope·y for the rest. A level side limits y alone, which
 * the first and last offset of the frame see to.
 */
export type HullWalls = { readonly lefts: number; readonly at: Float64Array; readonly slope: Float64Array };

type Limit = { readonly at: number; readonly slope: number };

/** Below this share of a wall's length its rise along x is nothing: a ten-thousandth of a hair in a hall. */
const LEVEL = 1e-12;

/**
 * Inside a convex outline the nearest wall is the nearest line, so a rectangle keeps its distance from a wall
 * when its furthest corner does. Hull anticlockwise, in the frame.
 */
export function hullWalls(hull: Polygon, width: number, height: number, distance: number): HullWalls {
  const lefts: Limit[] = [];
  const rights: Limit[] = [];
  for (const [[ax, ay], [bx, by]] of edgesOf(hull)) {
    const length = Math.hypot(bx - ax, by - ay);
    const [nx, ny] = [(by - ay) / length, (ax - bx) / length];
    if (!(Math.abs(nx) > LEVEL)) continue;
    const [cornerX, cornerY] = [nx > 0 ? width - SHRINK : SHRINK, ny > 0 ? height - SHRINK : SHRINK];
    const room = nx * ax + ny * ay - distance - ny * cornerY;
    (nx > 0 ? rights : lefts).push({ at: room / nx - cornerX, slope: -ny / nx });
  }
  const all = [...lefts, ...rights];
  return {
    lefts: lefts.length,
    at: Float64Array.from(all, (limit) => limit.at),
    slope: Float64Array.from(all, (limit) => limit.slope),
  };
}

/** The least and the greatest left edge between two offsets: what is allowed at all, or what is throughout. */
export type Room = { first: number; last: number };

/**
 * Narrows the room to what the walls leave for lower edges from low to high. "anywhere" takes each wall at
 * the end where it leaves more, "throughout" where it leaves less: each is a straight line.
 */
export function narrow(
  walls: HullWalls,
  low: number,
  high: number,
  where: "anywhere" | "throughout",
  room: Room,
): void {
  const { lefts, at, slope } = walls;
  const [kinder, harder] = where === "anywhere" ? [low, high] : [high, low];
  for (let i = 0; i < lefts; i++) {
    const limit = at[i]! + slope[i]! * (slope[i]! > 0 ? kinder : harder);
    if (limit > room.first) room.first = limit;
  }
  for (let i = lefts; i < at.length; i++) {
    const limit = at[i]! + slope[i]! * (slope[i]! < 0 ? kinder : harder);
    if (limit < room.last) room.last = limit;
  }
}
