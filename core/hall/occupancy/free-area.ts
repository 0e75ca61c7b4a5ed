import { edgesOf, type Point, type Polygon } from "#kernels/geometry";

/**
 * The area of the outline that none of the shapes covers, in the square of their unit: 100 for a floor of 10 × 11
 * with a stage of 10 × 1. Shapes may overlap one another and reach over the outline. Exact but for rounding: between
 * two neighbouring corners or crossings every border is straight, so a strip's middle tells its area.
 */
export function freeArea(outline: Polygon, shapes: readonly Polygon[]): number {
  const edges = [outline, ...shapes].flatMap(edgesFrom).sort((a, b) => a.from[0] - b.from[0]);
  const cuts = [...new Set([...edges.flatMap((it) => [it.from[0], it.to[0]]), ...crossings(edges)])];
  cuts.sort((a, b) => a - b);
  let [total, next] = [0, 0];
  let active: Edge[] = [];
  for (const [index, left] of cuts.slice(0, -1).entries()) {
    const right = cuts[index + 1] ?? left;
    active = active.filter((edge) => edge.to[0] > left);
    for (let edge = edges[next]; edge !== undefined && edge.from[0] <= left; edge = edges[++next])
      if (edge.to[0] > left) active.push(edge);
    total += freeLength(active, (left + right) / 2) * (right - left);
  }
  return total;
}

/** From left to right; shape 0 is the outline. */
type Edge = { readonly from: Point; readonly to: Point; readonly shape: number };

/** Upright edges bound no strip. */
function edgesFrom(polygon: Polygon, shape: number): readonly Edge[] {
  return edgesOf(polygon).flatMap(([a, b]) => {
    if (a[0] === b[0]) return [];
    return [a[0] < b[0] ? { from: a, to: b, shape } : { from: b, to: a, shape }];
  });
}

/** Where edges of two shapes cross; `edges` are sorted by their left ends. */
function crossings(edges: readonly Edge[]): readonly number[] {
  const found: number[] = [];
  for (const [index, one] of edges.entries())
    for (let at = index + 1; at < edges.length; at++) {
      const other = edges[at];
      if (other === undefined || other.from[0] >= one.to[0]) break;
      const x = other.shape === one.shape ? undefined : crossing(one, other);
      if (x !== undefined) found.push(x);
    }
  return found;
}

function crossing(one: Edge, other: Edge): number | undefined {
  const [slope, otherSlope] = [slopeOf(one), slopeOf(other)];
  if (slope === otherSlope) return undefined;
  const x = one.from[0] + (heightAt(other, one.from[0]) - one.from[1]) / (slope - otherSlope);
  return x > other.from[0] && x < Math.min(one.to[0], other.to[0]) ? x : undefined;
}

function slopeOf({ from, to }: Edge): number {
  return (to[1] - from[1]) / (to[0] - from[0]);
}

function heightAt(edge: Edge, x: number): number {
  return edge.from[1] + slopeOf(edge) * (x - edge.from[0]);
}

/** Going up the line at x: how much of it is inside the outline and inside no shape. */
function freeLength(edges: readonly Edge[], x: number): number {
  const met = edges.map((edge) => ({ y: heightAt(edge, x), shape: edge.shape })).sort((a, b) => a.y - b.y);
  const inside = new Set<number>();
  let free = 0;
  for (const [index, { y, shape }] of met.entries()) {
    if (!inside.delete(shape)) inside.add(shape);
    const next = met[index + 1];
    if (next !== undefined && inside.size === 1 && inside.has(0)) free += next.y - y;
  }
  return free;
}
