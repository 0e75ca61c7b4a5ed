import {
  gapPresetNames,
  gapPresets,
  type Hall,
  lShapedFloor,
  matPresetNames,
  matPresets,
  rectangleAt,
  rectangleFloor,
} from "#core/hall";
import { boundsOf, containsPoint, type Polygon, rotatePolygon } from "#kernels/geometry";
import {
  type Arbitrary,
  array,
  boolean,
  constant,
  constantFrom,
  double,
  integer,
  oneof,
  option,
  record,
  tuple,
  uniqueArray,
} from "fast-check";

/** Sound halls as they come: rooms, Ls and slanting floors, some turned, with fixtures, doors' zones and a teacher. */
export function randomHalls(): Arbitrary<Hall> {
  return randomOutlines().chain((outline) =>
    record({
      name: constantFrom("Tithe Barn Hall", "Quay Street Mission Room"),
      outline: constant(outline),
      fixtures: array(randomFixture(outline), { maxLength: 3 }).map((list) =>
        list.filter((it) => it !== null),
      ),
      keepClear: array(randomZone(outline), { maxLength: 2 }).map((list) => list.filter((it) => it !== null)),
      teacher: option(randomRectangle(outline, 3000)).map((zone) =>
        zone === null ? null : { outline: zone },
      ),
      mat: constantFrom(...matPresetNames).map((name) => matPresets[name]),
      gaps: constantFrom(...gapPresetNames).map((name) => gapPresets[name]),
      axis: oneof(constant("auto" as const), integer({ min: 0, max: 89 })),
      postedCapacity: option(integer({ min: 0, max: 120 }), { nil: undefined }),
      peopleNotOnMats: integer({ min: 0, max: 3 }),
    }),
  );
}

/** Floors from 3 to 20 m across, whole millimetres, in either direction round. */
export function randomOutlines(): Arbitrary<Polygon> {
  const shapes = oneof(randomRooms(), randomLs(), randomConvexFloors());
  const turns = oneof(
    { weight: 3, arbitrary: constant(0) },
    { weight: 1, arbitrary: integer({ min: 1, max: 359 }) },
  );
  return tuple(shapes, turns, boolean()).map(([shape, degrees, clockwise]) => {
    const turned = wholeMillimetres(degrees === 0 ? shape : rotatePolygon(shape, degrees));
    return clockwise ? turned.toReversed() : turned;
  });
}

export function randomRooms(): Arbitrary<Polygon> {
  return tuple(side(3, 20), side(3, 20)).map(([width, depth]) => rectangleFloor(width, depth));
}

export function randomLs(): Arbitrary<Polygon> {
  return tuple(side(5, 20), side(5, 20), side(1, 4), side(1, 4)).map(([width, depth, cutWidth, cutDepth]) =>
    lShapedFloor({ width, depth, cutWidth, cutDepth }),
  );
}

/** Corners on an ellipse, in order of their angle, are always convex. */
export function randomConvexFloors(): Arbitrary<Polygon> {
  const angles = uniqueArray(integer({ min: 0, max: 23 }), { minLength: 3, maxLength: 9 });
  return tuple(side(4, 12), side(4, 12), angles)
    .filter(([, , steps]) => widestStep(steps) < 12)
    .map(([across, up, steps]) =>
      wholeMillimetres(
        steps
          .toSorted((a, b) => a - b)
          .map(
            (step) =>
              [across * Math.cos((step * Math.PI) / 12), up * Math.sin((step * Math.PI) / 12)] as const,
          ),
      ),
    );
}

/** Under 12 steps of 15° the middle of the ellipse is inside, so that no floor is a sliver. */
function widestStep(steps: readonly number[]): number {
  const sorted = steps.toSorted((a, b) => a - b);
  return Math.max(...sorted.map((step, index) => (sorted[index + 1] ?? (sorted[0] ?? 0) + 24) - step));
}

function side(least: number, most: number): Arbitrary<number> {
  return integer({ min: least * 100, max: most * 100 }).map((centimetres) => centimetres * 10);
}

function randomFixture(outline: Polygon) {
  return tuple(randomRectangle(outline, 2000), boolean()).map(([shape, movable]) =>
    shape === null ? null : { label: "Stacked chairs", outline: shape, movable },
  );
}

function randomZone(outline: Polygon) {
  return randomRectangle(outline, 1500).map((shape) =>
    shape === null ? null : { label: "Way out", outline: shape },
  );
}

/** A rectangle with its middle on the floor; null where the dice put the middle outside. */
function randomRectangle(outline: Polygon, largest: number): Arbitrary<Polygon | null> {
  const { left, right, bottom, top } = boundsOf(outline);
  const share = double({ min: 0, max: 1, noNaN: true });
  const size = integer({ min: 100, max: largest });
  return tuple(share, share, size, size).map(([across, up, width, depth]) => {
    const [x, y] = [Math.round(left + across * (right - left)), Math.round(bottom + up * (top - bottom))];
    if (!containsPoint(outline, [x, y])) return null;
    return rectangleAt([x - Math.round(width / 2), y - Math.round(depth / 2)], width, depth);
  });
}

function wholeMillimetres(polygon: Polygon): Polygon {
  return polygon.map(([x, y]) => [Math.round(x) + 0, Math.round(y) + 0] as const);
}
