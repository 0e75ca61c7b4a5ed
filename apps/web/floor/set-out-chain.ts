// Example: a line of mats with centres 1.10 m apart and the first edge 0.50 m from the wall gives a chain "0.50" from
// the wall to that edge and "1.10" between each two centres.
// Invariant: a chain only repeats the plan's own set-out figures, laid where those lengths are on the floor.
import { type FloorDraft, type Mat, type MatPlan, onFloor, type PlacedMat } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { along } from "./dimension-placing.ts";
import { dot, type FiguredLine, lineDirections } from "./line-directions.ts";
import { direction } from "./mat-corners.ts";

/** One length of a chain, on the floor in millimetres. */
export type ChainLink = { readonly from: Point; readonly to: Point; readonly length: number };

/** Along a line with the most mats: wall to first mat, then centre to centre. Across: wall to line, line to line. */
export type SetOutChains = {
  readonly alongLine: readonly ChainLink[];
  readonly across: readonly ChainLink[];
};

/** A plan in lines, whichever way they stand. */
export type LinedPlan = Pick<MatPlan, "mats" | "setOut">;

/** Half of a usual gap, in millimetres: how far a chain stands beside the mats. */
const BESIDE = 250;

export function setOutChains(
  plan: LinedPlan,
  mat: Mat,
  floor: Pick<FloorDraft, "outline" | "teacher">,
): SetOutChains {
  const lines = figuredLines(plan);
  const anchor = lines.reduce<FiguredLine | undefined>(
    (most, it) => (most === undefined || it.mats.length > most.mats.length ? it : most),
    undefined,
  );
  if (anchor === undefined) return { alongLine: [], across: [] };
  const { run, step } = lineDirections(lines, anchor, floor);
  const [first] = anchor.mats;
  const halfRun = halfExtent(first, run, mat);
  const halfStep = halfExtent(first, step, mat);
  // beside the mats rather than over them, on the side where the figures begin
  const beside = along(first.centre, step, -halfStep - Math.min(anchor.figures.from / 2, BESIDE));
  const crossing = along(first.centre, run, crossingAt(anchor, halfRun));
  const nearEdge = (line: FiguredLine) =>
    along(crossing, step, line.figures.from - anchor.figures.from - halfStep);
  const crossed = lines.filter((line) => line === anchor || crosses(line, crossing, run, halfRun));
  return {
    alongLine: [
      linkBack(along(beside, run, -halfRun), run, anchor.figures.first),
      ...centreLinks(anchor, beside),
    ],
    across: withinWalls(acrossLinks(crossed, nearEdge, step), floor),
  };
}

/** The mats of each line, by the counts of the set-out list. */
function figuredLines(plan: LinedPlan): readonly FiguredLine[] {
  let taken = 0;
  return plan.setOut.lines.flatMap((figures) => {
    const [first, ...rest] = plan.mats.slice(taken, taken + figures.centres.length);
    taken += figures.centres.length;
    return first === undefined ? [] : [{ mats: [first, ...rest] as const, figures }];
  });
}

/** From the first centre of the line: the gap in its middle, or before its first mat where it has fewer than three. */
function crossingAt({ mats, figures }: FiguredLine, halfRun: number): number {
  const middle = Math.floor(mats.length / 2);
  const [one, other] = [mats[middle], mats[middle + 1]];
  if (one === undefined || other === undefined) return -halfRun - Math.min(figures.first / 2, BESIDE);
  const from = ({ centre }: PlacedMat) =>
    Math.hypot(centre[0] - mats[0].centre[0], centre[1] - mats[0].centre[1]);
  return (from(one) + from(other)) / 2;
}

/** Whether the chain meets the line or passes just beside its end; lines of another wing stay out of it. */
function crosses({ mats }: FiguredLine, crossing: Point, run: Point, halfRun: number): boolean {
  const at = dot(crossing, run);
  const places = mats.map((it) => dot(it.centre, run));
  const slack = halfRun + 2 * BESIDE;
  return Math.min(...places) - slack <= at && at <= Math.max(...places) + slack;
}

function halfExtent(placed: PlacedMat, way: Point, mat: Mat): number {
  const lengthwise = Math.abs(dot(direction(placed.angle), way));
  return lengthwise > 0.5 ? mat.length / 2 : mat.width / 2;
}

/** From the wall, `length` back along the way, to an edge. */
function linkBack(edge: Point, way: Point, length: number): ChainLink {
  return { from: along(edge, way, -length), to: edge, length };
}

/** From centre to centre of a line, drawn as far beside the mats as `beside` is beside the first centre. */
function centreLinks({ mats }: FiguredLine, beside: Point): readonly ChainLink[] {
  const [first] = mats;
  const aside = ([x, y]: Point): Point => [x + beside[0] - first.centre[0], y + beside[1] - first.centre[1]];
  return mats.slice(1).map(({ centre }, index) => {
    const from = mats[index]?.centre ?? centre;
    const length = Math.hypot(centre[0] - from[0], centre[1] - from[1]);
    return { from: aside(from), to: aside(centre), length };
  });
}

/** From the wall to the near edge of the first line, and from each near edge to the next. */
function acrossLinks(
  lines: readonly FiguredLine[],
  nearEdge: (line: FiguredLine) => Point,
  step: Point,
): readonly ChainLink[] {
  const inOrder = lines.toSorted((a, b) => a.figures.from - b.figures.from);
  return inOrder.flatMap((line, index) => {
    const before = inOrder[index - 1];
    const length = line.figures.from - (before?.figures.from ?? 0);
    if (before === undefined) return [linkBack(nearEdge(line), step, length)];
    return length < 1 ? [] : [{ from: nearEdge(before), to: nearEdge(line), length }];
  });
}

/** The chain up to where it would leave the floor, as it does past the end of a wing. */
function withinWalls(links: readonly ChainLink[], floor: Pick<FloorDraft, "outline">): readonly ChainLink[] {
  const outside = links.findIndex((link) => !onFloor(floor, link.to));
  return outside < 0 ? links : links.slice(0, outside);
}
