import { area, type Point } from "#kernels/geometry";
import { areaBound } from "./area-bound.ts";
import type { ArrangedPlan } from "./arranged-plan.ts";
import { mustBeSound } from "./must-be-sound.ts";
import type { Floor, Gaps, Piece, Placed } from "./packing-types.ts";
import { ringBound } from "./ring-bound.ts";
import { ringHolds, ringOfAngles } from "./ring-of-angles.ts";
import { standsFree } from "./stands-free.ts";

export type RoundPlan = ArrangedPlan & {
  /** per ring, from the centre to the near ends, in millimetres */
  readonly radii: readonly number[];
};

/** Radii are whole numbers of these, in millimetres. */
const CENTIMETRE = 10;
/** Places looked at around a ring: every half degree. */
const LOOKS = 720;

/**
 * Rings around a centre, everyone with feet towards it, each as near to the next as the gaps allow. Of all rings whose
 * radii are whole centimetres from `least` on and whose rectangles lie at half degrees from a first one, the most:
 * rings are kept apart by the circle through the far corners of the inner one, so that each may start anywhere.
 * That is not all there could be: the bound is `ringBound`, of every way to point rectangles at the centre, and proven
 * only where it is met. Lengths in millimetres. Throws on sizes that are none.
 */
export function roundPlan(floor: Floor, piece: Piece, gaps: Gaps, centre: Point, least: number): RoundPlan {
  mustBeSound(piece, gaps);
  if (!(least >= 0 && least < Infinity)) throw new RangeError(`not a distance from the centre: ${least}`);
  if (area(floor.outline) === 0)
    return { direction: 0, lines: [], radii: [], count: 0, bound: 0, proven: true };
  const rings = ringsFrom(floor, piece, gaps, centre, least);
  const chosen = bestRings(rings, piece, gaps);
  const lines = chosen.map(({ radius, angles }) =>
    angles.map((angle) => placedAt(piece, centre, radius, angle)),
  );
  const count = chosen.reduce((sum, ring) => sum + ring.angles.length, 0);
  const most = Math.min(areaBound(floor, piece, gaps), ringBound(floor, piece, gaps, centre, least));
  const bound = Math.max(count, most);
  const direction = lines[0]?.[0]?.angle ?? 0;
  return {
    direction,
    lines,
    radii: chosen.map((ring) => ring.radius),
    count,
    bound,
    proven: count === bound,
  };
}

type Ring = { readonly radius: number; readonly angles: readonly number[] };

function ringsFrom(floor: Floor, piece: Piece, gaps: Gaps, centre: Point, least: number): readonly Ring[] {
  const isFree = standsFree(floor, piece, gaps.wall);
  const furthest = Math.max(...floor.outline.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1])));
  const rings: Ring[] = [];
  const first = Math.ceil(least / CENTIMETRE) * CENTIMETRE;
  for (let radius = first; radius + piece.length <= furthest; radius += CENTIMETRE) {
    const apart = anglesApart(radius, piece, gaps);
    if (apart === null) continue;
    const free = Array.from({ length: LOOKS }, (_, look) =>
      isFree(placedAt(piece, centre, radius, (360 * look) / LOOKS)),
    );
    const steps = Math.ceil((apart * LOOKS) / 360 - 1e-9);
    if (ringHolds(free, steps) === 0) continue;
    rings.push({ radius, angles: ringOfAngles(free, steps).map((look) => (360 * look) / LOOKS) });
  }
  return rings;
}

/**
 * Degrees between neighbours of a ring: the near corner of each, with half a gap, lies on the line half-way between
 * them. Null where the near ends lie so near the centre that half a gap reaches it.
 */
function anglesApart(radius: number, piece: Piece, gaps: Gaps): number | null {
  const near = radius - gaps.end / 2;
  if (near <= 0) return null;
  return (2 * Math.atan2((piece.width + gaps.side) / 2, near) * 180) / Math.PI;
}

/** Rings so far apart that no corner of one, with half a gap, reaches the near side of the next: by dynamic programme. */
function bestRings(rings: readonly Ring[], piece: Piece, gaps: Gaps): readonly Ring[] {
  const best: { readonly count: number; readonly chosen: readonly Ring[] }[] = [];
  let before = -1;
  let reached = { count: 0, chosen: [] as readonly Ring[] };
  for (const ring of rings) {
    while (
      before + 1 < best.length &&
      outerEdge(rings[before + 1]!.radius, piece, gaps) <= ring.radius - gaps.end / 2
    ) {
      before++;
      const held = best[before];
      if (held !== undefined && held.count > reached.count) reached = held;
    }
    best.push({ count: reached.count + ring.angles.length, chosen: [...reached.chosen, ring] });
  }
  return best.reduce((held, other) => (other.count > held.count ? other : held), {
    count: 0,
    chosen: [] as readonly Ring[],
  }).chosen;
}

function outerEdge(radius: number, piece: Piece, gaps: Gaps): number {
  return Math.hypot(radius + piece.length + gaps.end / 2, (piece.width + gaps.side) / 2);
}

function placedAt(piece: Piece, [x, y]: Point, radius: number, degrees: number): Placed {
  const radians = (degrees * Math.PI) / 180;
  const out = radius + piece.length / 2;
  return { centre: [x + out * Math.cos(radians), y + out * Math.sin(radians)], angle: degrees % 180 };
}
