import { boundsOf, type Polygon, rotateAboutOrigin, rotatePolygon } from "#kernels/geometry";
import { checkPlaced, type Placed, rectangleOf } from "#kernels/packing";
import { interiorsMeet } from "../interiors-meet.ts";
import type { Hall } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { floorToFill } from "../mat-plan.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { type CoveredCells, coveredCells } from "./covered-cells.ts";
import { doorCells } from "./door-cells.ts";
import { cellsOnWay, OUT_OF_REACH, type ShortestWays, shortestWays } from "./shortest-ways.ts";
import { cellAt, stepFor, type WayGrid, wayGrid } from "./way-grid.ts";
import { wayLegs } from "./way-legs.ts";

/** Where a bay may lie, with its way to a door and the mats of the present plan that either would displace. */
export type PlaceCandidate = {
  readonly bay: Polygon;
  readonly way: readonly Polygon[];
  readonly displaced: readonly number[];
};

/** Bays are tried a quarter of a metre apart: in a hall of 100 m² some 3000 of them, in both ways round. */
const PACE = 250;

/**
 * Bays of that size on the floor, clear of fixtures, zones and the teacher, square to the front, from whose middle a
 * way so wide leads to a door past walls and fixtures: those that displace the fewest mats first, of these the one
 * with the shortest way. At most `most`, each displacing other mats than the ones before. The way has half a cell's
 * diagonal and half a cell to spare on each side, so that it is nowhere narrower: 12 mm with cells of 10 mm.
 */
export function placeCandidates(
  hall: Hall,
  bay: { readonly length: number; readonly width: number },
  mats: readonly PlacedMat[],
  wayWidth: number,
  most: number,
): readonly PlaceCandidate[] {
  const step = stepFor(hall.outline);
  const reach = wayWidth / 2 + step * (Math.SQRT1_2 + 0.5);
  const grid = wayGrid(hall, step, reach);
  // along a straight wall the first open cells lie up to a whole cell past the reach: half a cell more meets them
  const ways = shortestWays(grid, doorCells(grid, hall.keepClear, reach + step / 2));
  const covered = coveredCells(grid, hall.mat, mats, wayWidth / 2);
  const found = bayPlaces(hall, bay).flatMap((placed) =>
    measured(hall, bay, placed, mats, { grid, ways, covered }),
  );
  const sorted = found.sort((a, b) => a.displaced.length - b.displaced.length || a.far - b.far);
  const chosen = sorted.filter((it, index) => sorted.findIndex((other) => other.key === it.key) === index);
  return chosen.slice(0, most).map(({ bay: outline, start, displaced }) => ({
    bay: outline,
    way: wayLegs(grid, cellsOnWay(ways, start), wayWidth),
    displaced,
  }));
}

type Searched = { readonly grid: WayGrid; readonly ways: ShortestWays; readonly covered: CoveredCells };

function measured(
  hall: Hall,
  bay: { readonly length: number; readonly width: number },
  placed: Placed,
  mats: readonly PlacedMat[],
  { grid, ways, covered }: Searched,
) {
  const start = cellAt(grid, placed.centre);
  const far = ways.length[start] ?? OUT_OF_REACH;
  if (far === OUT_OF_REACH) return [];
  const outline = rectangleOf(placed, bay);
  const met = new Set(cellsOnWay(ways, start).map((cell) => covered.setOf[cell] ?? 0));
  const displaced = new Set([...met].flatMap((set) => covered.sets[set] ?? []));
  const near = (hall.mat.length + hall.mat.width + bay.length + bay.width) / 2;
  for (const [index, mat] of mats.entries()) {
    const apart = Math.hypot(mat.centre[0] - placed.centre[0], mat.centre[1] - placed.centre[1]);
    if (apart < near && interiorsMeet(rectangleOf(mat, hall.mat), outline)) displaced.add(index);
  }
  const list = [...displaced].sort((a, b) => a - b);
  return [{ bay: outline, start, far, displaced: list, key: list.join(" ") }];
}

/** Allowed bays in rows across the hall from the front, each row from the left, the long side first across. */
function bayPlaces(hall: Hall, bay: { readonly length: number; readonly width: number }): readonly Placed[] {
  const { right } = hallFrame(hall);
  const degrees = (Math.atan2(right[1], right[0]) * 180) / Math.PI;
  const bounds = boundsOf(rotatePolygon(hall.outline, -degrees));
  const floor = floorToFill(hall);
  const none = { side: 0, end: 0, wall: 0 };
  const turns = bay.length === bay.width ? [0] : [0, 90];
  return turns.flatMap((turn) => {
    const [across, deep] = turn === 0 ? [bay.length, bay.width] : [bay.width, bay.length];
    const angle = (((degrees + turn) % 180) + 180) % 180;
    return paces(bounds.top - deep / 2, bounds.bottom + deep / 2).flatMap((y) =>
      paces(bounds.left + across / 2, bounds.right - across / 2)
        .map((x): Placed => ({ centre: rotateAboutOrigin([x, y], degrees), angle }))
        .filter((placed) => checkPlaced(floor, bay, none, [placed]).length === 0),
    );
  });
}

/** From one end to the other, both included, whichever is larger; none where the first is past the second by size. */
function paces(from: number, to: number): readonly number[] {
  const count = Math.floor(Math.abs(to - from) / PACE);
  const way = Math.sign(to - from);
  const steps = Array.from({ length: count + 1 }, (_, index) => from + way * index * PACE);
  return steps.at(-1) === to ? steps : [...steps, to];
}
