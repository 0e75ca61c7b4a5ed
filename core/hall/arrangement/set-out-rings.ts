import { containsPoint, type Point, type Polygon } from "#kernels/geometry";
import type { Floor, RoundPlan } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { added, dot, scaled, subtracted } from "../vectors.ts";
import { type Quarter, quarters, type RingMark, type SetOutRing } from "./ring-set-out-types.ts";
import type { RoundCentre } from "./round-centre.ts";
import { standsAllowed } from "./stands-allowed.ts";

type Laid = { readonly mat: PlacedMat; readonly mark: RingMark };
type Frame = { readonly centre: Point; readonly front: Point; readonly right: Point };

/** Whole centimetres within this of the exact chord are tried, then whole millimetres as many times over. */
const STEPS = [10, 1] as const;
const STEPS_ASIDE = 3;

/**
 * The rings with each mat's foot end a whole centimetre, straight, from the nearest quarter of the ring that lies on the
 * floor; where no such place is allowed a whole millimetre, and where not that either as it was. Mats are told round
 * to the right from straight before the centre.
 */
export function setOutRings(
  hall: Hall,
  floor: Floor,
  { lines, radii }: RoundPlan,
  { centre, front }: RoundCentre,
): { readonly mats: readonly PlacedMat[]; readonly rings: readonly SetOutRing[] } {
  const frame = { centre, front, right: [front[1], 0 - front[0]] as const };
  const mats: PlacedMat[] = [];
  const rings = radii.map((radius, index): SetOutRing => {
    const ring = laidRing(hall, floor, frame, radius, lines[index] ?? []);
    mats.push(...ring.map((it) => it.mat));
    return { radius, marks: ring.map((it) => it.mark) };
  });
  return { mats, rings };
}

function laidRing(
  hall: Hall,
  floor: Floor,
  frame: Frame,
  radius: number,
  exact: readonly PlacedMat[],
): readonly Laid[] {
  const bearings = exact.map((mat) => bearingOf(frame, mat.centre)).sort((a, b) => a - b);
  const open = quarters.filter((quarter) => isOpen(hall.outline, frame, radius, quarter));
  const mats = bearings.map((bearing) => matAt(hall, frame, radius, bearing));
  return bearings.map((bearing, index) => {
    const others = mats.filter((_, other) => other !== index);
    const tried = marksNear(radius, bearing, open.length === 0 ? quarters : open).map((mark) => ({
      mark,
      mat: matAt(hall, frame, radius, mark.bearing),
    }));
    const found = tried.find(({ mat }) => standsAllowed(hall, floor, mat, others)) ?? {
      mark: markOf(radius, bearing, open),
      mat: matAt(hall, frame, radius, bearing),
    };
    mats[index] = found.mat;
    return { mat: found.mat, mark: { ...found.mark, bearing: Math.round(found.mark.bearing * 10) / 10 } };
  });
}

/** Degrees to the right of the front, 0 ≤ bearing < 360. */
function bearingOf({ centre, front, right }: Frame, point: Point): number {
  const out = subtracted(point, centre);
  const degrees = (Math.atan2(dot(out, right), dot(out, front)) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}

function pointAt({ centre, front, right }: Frame, radius: number, bearing: number): Point {
  const radians = (bearing * Math.PI) / 180;
  const way = added(scaled(front, Math.cos(radians)), scaled(right, Math.sin(radians)));
  return added(centre, scaled(way, radius));
}

/** Feet to the centre, its length along the string. */
function matAt({ mat }: Hall, frame: Frame, radius: number, bearing: number): PlacedMat {
  const centre = pointAt(frame, radius + mat.length / 2, bearing);
  const [x, y] = subtracted(centre, frame.centre);
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  return { centre, angle: ((degrees % 180) + 180) % 180 };
}

function isOpen(outline: Polygon, frame: Frame, radius: number, quarter: Quarter): boolean {
  return containsPoint(outline, pointAt(frame, radius, quarterBearing(quarter)));
}

function quarterBearing(quarter: Quarter): number {
  return quarters.indexOf(quarter) * 90;
}

/** −180 < degrees ≤ 180: to the right of the quarter. */
function asideOf(bearing: number, quarter: Quarter): number {
  const aside = (((bearing - quarterBearing(quarter)) % 360) + 360) % 360;
  return aside > 180 ? aside - 360 : aside;
}

function nearestQuarter(bearing: number, open: readonly Quarter[]): Quarter {
  return open.reduce(
    (best, other) =>
      Math.abs(asideOf(bearing, other)) < Math.abs(asideOf(bearing, best)) - 1e-9 ? other : best,
    open[0] ?? "front",
  );
}

/** Exactly where it is; the chord to the nearest millimetre. */
function markOf(radius: number, bearing: number, open: readonly Quarter[]): RingMark {
  const from = nearestQuarter(bearing, open);
  const aside = asideOf(bearing, from);
  const chord = 2 * radius * Math.sin((Math.abs(aside) * Math.PI) / 360);
  return { from, side: aside < 0 ? "left" : "right", chord: Math.round(chord), bearing };
}

/** The nearest whole chords first, centimetres before millimetres. */
function marksNear(radius: number, bearing: number, open: readonly Quarter[]): readonly RingMark[] {
  const from = nearestQuarter(bearing, open);
  const aside = asideOf(bearing, from);
  const exact = 2 * radius * Math.sin((Math.abs(aside) * Math.PI) / 360);
  return STEPS.flatMap((step) => {
    const middle = Math.round(exact / step);
    return Array.from({ length: 2 * STEPS_ASIDE + 1 }, (_, index) => (middle + index - STEPS_ASIDE) * step)
      .filter((chord) => chord >= 0 && chord <= 2 * radius)
      .sort((a, b) => Math.abs(a - exact) - Math.abs(b - exact) || a - b);
  }).map((chord): RingMark => {
    const degrees = (2 * Math.asin(chord / (2 * radius)) * 180) / Math.PI;
    const turned = quarterBearing(from) + (aside < 0 ? -degrees : degrees);
    return { from, side: aside < 0 ? "left" : "right", chord, bearing: ((turned % 360) + 360) % 360 };
  });
}
