import type { Point } from "#kernels/geometry";
import { checkPlaced, type Floor } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { added, dot, scaled } from "../vectors.ts";
import { measurePlace, type TapeFrame, type TapeWay } from "./measure-place.ts";
import { standsAllowed } from "./stands-allowed.ts";

/** Whole centimetres with whole millimetres where those break a gap, or whole millimetres for all. */
const STEPS = [[10, 1], [1]] as const;
type Steps = (typeof STEPS)[number];

/** A mat that gives way to those before it goes on by so many steps at most. */
const STEPS_ON = 15;

/** A thousandth of a millimetre: what turns and sums leave. */
const HAIR = 1e-3;

/**
 * The same mats, each shifted a little along one way and then the other, so that its figures for the tape are whole
 * centimetres; where that breaks a gap, whole millimetres; where that does too, all as they were that way. From the
 * first wall on: each mat goes back as little as it can, if that is allowed, else on, and those after it give way.
 * Null where the whole is not allowed: then the exact places have to do.
 */
export function wholePlaces(
  hall: Hall,
  floor: Floor,
  exact: readonly PlacedMat[],
  { along, away }: TapeFrame,
): readonly PlacedMat[] | null {
  const sideways = wholeWay(hall, floor, exact, along);
  const whole = wholeWay(hall, floor, sideways, away);
  return checkPlaced(floor, hall.mat, hall.gaps, whole).length === 0 ? whole : null;
}

function wholeWay(hall: Hall, floor: Floor, mats: readonly PlacedMat[], way: TapeWay): readonly PlacedMat[] {
  const [mixed, fine] = STEPS;
  return steppedWay(hall, floor, mats, way, mixed) ?? steppedWay(hall, floor, mats, way, fine) ?? mats;
}

/** Null where some mat finds no place. */
function steppedWay(
  hall: Hall,
  floor: Floor,
  mats: readonly PlacedMat[],
  way: TapeWay,
  steps: Steps,
): readonly PlacedMat[] | null {
  const inOrder = [...mats.keys()].sort((a, b) => placeOf(mats[a], way.way) - placeOf(mats[b], way.way));
  const moved = [...mats];
  const done: PlacedMat[] = [];
  for (const index of inOrder) {
    const placed = mats[index];
    if (placed === undefined) continue;
    const found = candidates(hall, placed, way, steps).find((it) => standsAllowed(hall, floor, it, done));
    if (found === undefined) return null;
    moved[index] = found;
    done.push(found);
  }
  return moved;
}

function placeOf(mat: PlacedMat | undefined, way: Point): number {
  return mat === undefined ? 0 : dot(mat.centre, way);
}

/** Back to the step before, on to the next ones; first all centimetres, then the nearest millimetres. */
function candidates(hall: Hall, placed: PlacedMat, way: TapeWay, steps: Steps): readonly PlacedMat[] {
  const { figure, grows } = measurePlace(hall.outline, hall.mat, placed, way);
  return [...steps]
    .flatMap((step) => {
      const beyond = over(figure * grows, step);
      const count = Math.abs(beyond) < HAIR ? STEPS_ON : STEPS_ON + 1;
      return Array.from({ length: count }, (_, on) => on * step - beyond);
    })
    .map((by) => ({ ...placed, centre: added(placed.centre, scaled(way.way, by)) }));
}

/** What a figure has over the last whole step; a hair short of the next is a hair less than nothing over that. */
function over(figure: number, step: number): number {
  const left = figure - Math.floor(figure / step) * step;
  return left > step - HAIR ? left - step : left;
}
