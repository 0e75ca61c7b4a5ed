import { bad, formatLength, good, type LengthUnits, problem, type Problem, type Result } from "#core/words";
import type { Hall } from "../hall.ts";
import { countedFrom, matInWords, matsInWords, type NamedMats } from "../mat-in-words.ts";
import { cellsNear, coveredCells } from "./covered-cells.ts";
import { doorCells } from "./door-cells.ts";
import { easiestWays, matsOnWay, NO_WAY } from "./easiest-ways.ts";
import { freeParts } from "./free-parts.ts";
import { leavesMat, type MattedFloor } from "./leaves-mat.ts";
import { HAIR, stepFor, wayGrid } from "./way-grid.ts";
import { waysOut } from "./ways-out.ts";

export type ClearWay = {
  /** whether every mat has a way */
  readonly clear: boolean;
  readonly stuck: readonly StuckMat[];
  /** every mat that is in the way of one that is stuck, by index, rising */
  readonly blocking: readonly number[];
  readonly doors: readonly string[];
  /** by how many millimetres at most a way that is called clear may be narrower than asked for */
  readonly resolution: number;
  readonly sentences: readonly string[];
};

export type StuckMat = {
  readonly mat: number;
  /** with these taken up it has a way; none where walls and fixtures alone leave no way so wide */
  readonly blockedBy: readonly number[];
  /** "mat 2 of line 3: past mat 1 of line 2" */
  readonly says: string;
};

/**
 * Whether from every mat a way of that width leads to a door across no other mat and no fixture. Millimetres. Zones
 * to keep clear and the teacher's may be crossed. Problems: "doors-missing" where no door is drawn, "way-width" for a
 * width not from 0.30 to 5 m.
 *
 * A way so wide is the path of a disc that touches no wall, fixture or mat but the one it starts from, begins with
 * its middle on that mat and ends touching a shut leaf. The floor is looked at in square cells, a cell being open
 * where its middle is no nearer to anything than half the width less half the cell's diagonal; the disc's middle is
 * always in an open cell, so a mat that is called stuck is stuck. The other way round a way over open cells may be
 * too narrow by up to twice the diagonal of a cell, and that is told as the resolution: 29 mm with cells of 10 mm,
 * up to 120 m² of floor.
 */
export function clearWay(
  hall: Hall,
  plan: NamedMats,
  width: number,
  units: LengthUnits = "metric",
): Result<ClearWay> {
  const problems = [...widthProblems(width, units), ...doorProblems(hall)];
  if (problems.length > 0) return bad(...problems);
  const step = stepFor(hall.outline);
  const floor = mattedFloor(hall, plan, width / 2, step);
  const stuckMats = plan.mats.flatMap((_, mat) => (hasWay(hall, plan, width / 2, floor, mat) ? [] : [mat]));
  const stuck = stuckMats.length === 0 ? [] : blockers(hall, plan, floor, stuckMats);
  const blocking = [...new Set(stuck.flatMap((it) => it.blockedBy))].sort((a, b) => a - b);
  const resolution = Math.ceil(2 * Math.SQRT2 * step);
  const doors = waysOut(hall.keepClear).map((it) => it.label);
  const sentences = sentencesOf(plan, stuck, blocking, resolution, formatLength(width, units), units);
  return good({ clear: stuck.length === 0, stuck, blocking, doors, resolution, sentences });
}

/** Nobody gets through less, and more is a slip of the unit. Millimetres. */
const NARROWEST = 300;
const WIDEST = 5000;

/** Problems: "way-width". */
export function widthProblems(width: number, units: LengthUnits = "metric"): readonly Problem[] {
  if (width >= NARROWEST && width <= WIDEST) return [];
  const says = Number.isFinite(width)
    ? `A way ${formatLength(width, units)} wide was asked for.`
    : "The width of the way is not a number.";
  const next = `Ask for a way from ${formatLength(NARROWEST, units)} to ${formatLength(WIDEST, units)} wide.`;
  return [problem("way-width", "width", says, next)];
}

/** Problems: "doors-missing". */
export function doorProblems({ keepClear }: Pick<Hall, "keepClear">): readonly Problem[] {
  if (waysOut(keepClear).length > 0) return [];
  if (keepClear.some((it) => it.door !== undefined)) return [noneLeadsOut()];
  const next = "Draw the doors that lead out, with the way they swing.";
  return [
    problem("doors-missing", "keepClear", "No door is drawn, so no way to one can be looked for.", next),
  ];
}

function noneLeadsOut(): Problem {
  const says = "Every door that is drawn is marked as no way out, so no way to one can be looked for.";
  return problem("doors-missing", "keepClear", says, "Mark the doors that lead out, or draw them.");
}

function mattedFloor(hall: Hall, plan: NamedMats, radius: number, step: number): MattedFloor {
  const reach = radius - step * Math.SQRT1_2;
  const grid = wayGrid(hall, step, reach);
  const covered = coveredCells(grid, hall.mat, plan.mats, reach);
  const free = freeParts(grid, covered);
  const atDoor = new Uint8Array(grid.shut.length);
  const partsWithDoor = new Set<number>();
  for (const cell of doorCells(grid, hall.keepClear, radius)) {
    atDoor[cell] = 1;
    const part = free.partOf[cell] ?? 0;
    if (part > 0) partsWithDoor.add(part);
  }
  const seen = new Uint8Array(grid.shut.length);
  return { grid, covered, free, atDoor, partsWithDoor, seen };
}

/** Open cells with their middle on the mat, to half a diagonal. */
function startCells({ mat }: Hall, { grid }: MattedFloor, plan: NamedMats, index: number): readonly number[] {
  const placed = plan.mats[index];
  if (placed === undefined) throw new RangeError(`no mat ${index}`);
  return cellsNear(grid, mat, placed, grid.step * Math.SQRT1_2 + HAIR);
}

function hasWay(hall: Hall, plan: NamedMats, radius: number, floor: MattedFloor, mat: number): boolean {
  const placed = plan.mats[mat];
  if (placed === undefined) return false;
  const near = () => cellsNear(floor.grid, hall.mat, placed, radius);
  return leavesMat(floor, mat, startCells(hall, floor, plan, mat), near);
}

function blockers(
  hall: Hall,
  plan: NamedMats,
  floor: MattedFloor,
  stuck: readonly number[],
): readonly StuckMat[] {
  const { grid, covered, atDoor } = floor;
  const doors = [...atDoor.keys()].filter((cell) => atDoor[cell] === 1);
  const ways = easiestWays(grid, covered, doors);
  return stuck.map((mat) => {
    const starts = startCells(hall, floor, plan, mat);
    const best = starts.reduce(
      (least, cell) => ((ways.mats[cell] ?? NO_WAY) < (ways.mats[least] ?? NO_WAY) ? cell : least),
      starts[0] ?? -1,
    );
    const found = best >= 0 && (ways.mats[best] ?? NO_WAY) < NO_WAY;
    const blockedBy = found ? matsOnWay(ways, covered, best).filter((it) => it !== mat) : [];
    return { mat, blockedBy, says: stuckSays(plan, mat, blockedBy) };
  });
}

function stuckSays(plan: NamedMats, mat: number, blockedBy: readonly number[]): string {
  return blockedBy.length === 0
    ? `${matInWords(plan, mat)}: walls and fixtures leave no way so wide`
    : `${matInWords(plan, mat)}: past ${matsInWords(plan, blockedBy)}`;
}

function sentencesOf(
  plan: NamedMats,
  stuck: readonly StuckMat[],
  blocking: readonly number[],
  resolution: number,
  wide: string,
  units: LengthUnits,
): readonly string[] {
  const way = `way ${wide} wide to a door`;
  const near = units === "metric" ? `${Math.ceil(resolution / 10)} cm` : formatLength(resolution, units);
  const told = `Looked at to ${near}: a way that is called clear may be so much narrower, one that is called blocked is blocked.`;
  if (plan.mats.length === 0) return ["There is no mat that needs a way to a door."];
  if (stuck.length === 0) return [`Every mat has a ${way}.`, told];
  const who = matsInWords(
    plan,
    stuck.map((it) => it.mat),
  );
  const built = stuck.filter((it) => it.blockedBy.length === 0).map((it) => it.mat);
  return [
    `${stuck.length} of ${plan.mats.length} mats ${stuck.length === 1 ? "has" : "have"} no ${way}: ${who}.`,
    ...(blocking.length === 0 ? [] : [`In the way: ${matsInWords(plan, blocking)}.`]),
    ...(built.length === 0
      ? []
      : [`Walls and fixtures alone leave no way so wide for ${matsInWords(plan, built)}.`]),
    ...countedFrom(plan),
    told,
  ];
}
