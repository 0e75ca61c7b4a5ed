// Example: a first line of mats with centres 1.10 m apart and the first edge 0.50 m from the wall gives a chain
// "0.50" from the wall to that edge and "1.10" between each two centres.
// Invariant: a chain only repeats the plan's own set-out figures, laid where those lengths are on the floor.
import type { Mat, MatPlan, PlacedMat } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { along } from "./dimension-placing.ts";
import { direction } from "./mat-corners.ts";

/** One length of a chain, on the floor in millimetres. */
export type ChainLink = { readonly from: Point; readonly to: Point; readonly length: number };

/** Along the first line: wall to first mat, then from centre to centre. Across: wall to the first line, then line to line. */
export type SetOutChains = {
  readonly alongLine: readonly ChainLink[];
  readonly across: readonly ChainLink[];
};

export function setOutChains(plan: MatPlan, mat: Mat): SetOutChains {
  const lines = linesOfMats(plan);
  const [first] = lines;
  const start = first?.[0];
  const figures = plan.setOut.lines[0];
  if (first === undefined || start === undefined || figures === undefined)
    return { alongLine: [], across: [] };
  const run = runDirection(lines, start);
  const step: Point = stepDirection(lines, start, run);
  const halfAlong = halfExtent(start, run, mat);
  const halfAcross = halfExtent(start, step, mat);
  // beside the mats rather than over them, on the side where the first figures are measured
  const beside: Point = along(start.centre, step, -halfAcross - Math.min(figures.from / 2, BESIDE));
  const before: Point = along(start.centre, run, acrossAt(first, halfAlong, figures.first));
  return {
    alongLine: [linkBack(beside, run, halfAlong, figures.first), ...centreLinks(first, start.centre, beside)],
    across: [
      linkBack(before, step, halfAcross, figures.from),
      ...lineLinks(lines, plan, before, step, halfAcross),
    ],
  };
}

/**
 * How far along the first line the chain across stands, from its first centre: in the gap in the middle of the line,
 * clear of the first figures; before the first mat where there are fewer than three.
 */
function acrossAt(line: readonly PlacedMat[], halfAlong: number, first: number): number {
  const middle = Math.floor(line.length / 2);
  const [start, one, other] = [line[0], line[middle], line[middle + 1]];
  if (start === undefined || one === undefined || other === undefined || middle === 0) {
    return -halfAlong - Math.min(first / 2, BESIDE);
  }
  const from = ({ centre }: PlacedMat) =>
    Math.hypot(centre[0] - start.centre[0], centre[1] - start.centre[1]);
  return (from(one) + from(other)) / 2;
}

/** Half of a usual gap, in millimetres. */
const BESIDE = 250;

/** The mats of each line, by the counts of the set-out list. */
function linesOfMats(plan: MatPlan): readonly (readonly PlacedMat[])[] {
  let taken = 0;
  return plan.setOut.lines.map((line) => {
    const mats = plan.mats.slice(taken, taken + line.centres.length);
    taken += line.centres.length;
    return mats;
  });
}

/** From the first mat to the last of the longest line; across the only mat where no line has two. */
function runDirection(lines: readonly (readonly PlacedMat[])[], start: PlacedMat): Point {
  const longest = lines.reduce<readonly PlacedMat[]>((best, it) => (it.length > best.length ? it : best), []);
  const last = longest.at(-1);
  const head = longest[0];
  if (head === undefined || last === undefined || head === last) return direction(start.angle + 90);
  return unit([last.centre[0] - head.centre[0], last.centre[1] - head.centre[1]]);
}

/** Square to the run, towards the later lines. */
function stepDirection(lines: readonly (readonly PlacedMat[])[], start: PlacedMat, run: Point): Point {
  const other = lines.at(-1)?.[0] ?? start;
  const left: Point = [-run[1], run[0]];
  const ahead = dot([other.centre[0] - start.centre[0], other.centre[1] - start.centre[1]], left);
  return ahead < 0 ? [-left[0], -left[1]] : left;
}

function halfExtent(placed: PlacedMat, way: Point, mat: Mat): number {
  const lengthwise = Math.abs(dot(direction(placed.angle), way));
  return lengthwise > 0.5 ? mat.length / 2 : mat.width / 2;
}

function linkBack(centre: Point, way: Point, half: number, length: number): ChainLink {
  const edge = along(centre, way, -half);
  return { from: along(edge, way, -length), to: edge, length };
}

/** From centre to centre of a line, drawn as far beside the mats as `beside` is beside the first centre. */
function centreLinks(mats: readonly PlacedMat[], first: Point, beside: Point): readonly ChainLink[] {
  const aside = ([x, y]: Point): Point => [x + beside[0] - first[0], y + beside[1] - first[1]];
  return mats.slice(1).map(({ centre }, index) => {
    const from = mats[index]?.centre ?? centre;
    const length = Math.hypot(centre[0] - from[0], centre[1] - from[1]);
    return { from: aside(from), to: aside(centre), length };
  });
}

/** From the near edge of each line to the near edge of the next. */
function lineLinks(
  lines: readonly (readonly PlacedMat[])[],
  plan: MatPlan,
  start: Point,
  step: Point,
  half: number,
): readonly ChainLink[] {
  const firstFrom = plan.setOut.lines[0]?.from ?? 0;
  return plan.setOut.lines.slice(1, lines.length).map((line, index) => {
    const before = plan.setOut.lines[index]?.from ?? firstFrom;
    return {
      from: along(start, step, before - firstFrom - half),
      to: along(start, step, line.from - firstFrom - half),
      length: line.from - before,
    };
  });
}

function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

function unit([x, y]: Point): Point {
  const length = Math.hypot(x, y);
  return length === 0 ? [1, 0] : [x / length, y / length];
}
