// Example: a line whose first mat starts 0.92 m from the left wall gets a dimension of 0.92 from that wall to that mat.
// Invariant: a dimension is drawn only where its wall end really lies on a wall; what is not drawn stands in the list.
import { type ArrangedMatPlan, type Hall, onFloor, type SetOutLine } from "#core/hall";
import { edgeDistance, edgesOf, type Point, pointToSegment, rotateAboutOrigin } from "#kernels/geometry";
import type { LengthUnits } from "#core/words";
import type { Mark } from "./paper-types.ts";
import { middleOf, onPaper, type PlanView, stepped, wayBetween } from "./plan-view.ts";
import { drawnLength } from "./said-length.ts";
import { centredText, readableTurn, textBox } from "./text-marks.ts";
import { hair, tick } from "./wall-marks.ts";

/** One length on the floor, in hall millimetres. */
type Link = { readonly from: Point; readonly to: Point };
type Laid = { readonly mats: readonly ArrangedMatPlan["mats"][number][]; readonly figures: SetOutLine };
type Ways = { readonly run: Point; readonly step: Point };

const SIZE = 6.5;
/** What a figure takes to either side of its line, in millimetres of paper. */
const HALF_A_FIGURE = 0.9;
/** The figures are rounded to the millimetre, and a corner may be half of one off. */
const ON_WALL = 2;

/**
 * The figures of the set-out on the drawing: along a line with the most mats, from a wall where that can be, and from
 * line to line; each only where no mat lies under its line or its figure.
 */
export function chainMarks(
  view: PlanView,
  hall: Hall,
  plan: ArrangedMatPlan,
  units: LengthUnits,
): readonly Mark[] {
  const lines = laidLines(plan);
  const byCount = lines.toSorted((a, b) => b.mats.length - a.mats.length);
  const [longest] = byCount;
  const ways = longest === undefined ? null : waysOf(lines, longest);
  if (ways === null) return [];
  const isFree = (links: readonly Link[]): boolean =>
    !links.some((link) => crossesMat(hall, plan, link, HALF_A_FIGURE * view.ratio));
  const chains = byCount.map((line) => alongLine(hall, line, ways, view)).filter((it) => isFree(it.centres));
  const fromWall = chains.find(({ wall }) => wall !== null && isFree([wall]));
  const along =
    fromWall === undefined ? (chains[0]?.centres ?? []) : [...wallOf(fromWall), ...fromWall.centres];
  const across = acrossLines(hall, lines, ways, view);
  return [along, isFree(across) ? across : []].flatMap((links) => linkMarks(links, view, units));
}

/** The mats of each line with its figures; none where mats do not stand in lines. */
function laidLines(plan: ArrangedMatPlan): readonly Laid[] {
  if (!("setOut" in plan)) return [];
  let taken = 0;
  return plan.setOut.lines.map((figures) => {
    const from = taken;
    taken += figures.centres.length;
    return { mats: plan.mats.slice(from, taken), figures };
  });
}

/** Which way a line runs and the lines follow; null where one mat a line leaves it open. */
function waysOf(lines: readonly Laid[], { mats, figures }: Laid): Ways | null {
  const [first, second] = mats;
  if (first === undefined || second === undefined) return null;
  const run = wayBetween(first.centre, second.centre);
  const square: Point = [0 - run[1], run[0]];
  const other = lines.toSorted(
    (a, b) => Math.abs(b.figures.from - figures.from) - Math.abs(a.figures.from - figures.from),
  )[0];
  const place = other?.mats[0]?.centre;
  if (other === undefined || place === undefined || Math.abs(other.figures.from - figures.from) < 1)
    return { run, step: square };
  const apart = (place[0] - first.centre[0]) * square[0] + (place[1] - first.centre[1]) * square[1];
  const later = other.figures.from > figures.from;
  return { run, step: apart > 0 === later ? square : [0 - square[0], 0 - square[1]] };
}

/** From the wall to the first mat, then from centre to centre, a little before the near edge of the line. */
type Along = { readonly wall: Link | null; readonly centres: readonly Link[] };

function alongLine(hall: Hall, { mats, figures }: Laid, { run, step }: Ways, view: PlanView): Along {
  const [first] = mats;
  if (first === undefined) return { wall: null, centres: [] };
  const [halfRun, halfStep] = halves(hall, first.angle, run);
  const before = Math.min(2.2 * view.ratio, Math.max(0, figures.from / 2));
  const edge = (at: Point): Point => stepped(at, step, -halfStep - before);
  const corner = stepped(first.centre, run, -halfRun);
  const start = stepped(corner, run, -figures.first);
  const reaches = isOnWall(hall, stepped(start, step, -halfStep)) && isOnWall(hall, edge(start));
  const centres = mats.slice(1).map((mat, index) => ({
    from: edge(mats[index]?.centre ?? mat.centre),
    to: edge(mat.centre),
  }));
  return { wall: reaches ? { from: edge(start), to: edge(corner) } : null, centres };
}

function wallOf({ wall }: Along): readonly Link[] {
  return wall === null ? [] : [wall];
}

function crossesMat({ mat }: Hall, { mats }: ArrangedMatPlan, { from, to }: Link, beside: number): boolean {
  return mats.some((placed) => {
    const [a, b] = [from, to].map((point) => inMatFrame(placed, point));
    if (a === undefined || b === undefined) return false;
    return edgeDistance([a, b], frameBox(mat.length + 2 * beside, mat.width + 2 * beside)) === 0;
  });
}

/** A point as seen from the middle of a mat along its length. */
function inMatFrame({ centre, angle }: ArrangedMatPlan["mats"][number], [x, y]: Point): Point {
  return rotateAboutOrigin([x - centre[0], y - centre[1]], -angle);
}

function frameBox(length: number, width: number): readonly Point[] {
  const [x, y] = [length / 2, width / 2];
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ];
}

/** How far beside its first mat a line still belongs to the chain of another, in millimetres. */
const NEAR = 1200;

/** From the wall to the near edge of the first line, and from near edge to near edge, beside where the mats begin. */
function acrossLines(
  hall: Hall,
  lines: readonly Laid[],
  { run, step }: Ways,
  view: PlanView,
): readonly Link[] {
  const [nearest] = lines.toSorted((a, b) => a.figures.from - b.figures.from);
  const first = nearest?.mats[0];
  if (nearest === undefined || first === undefined) return [];
  const [halfRun, halfStep] = halves(hall, first.angle, run);
  // how much further on than the nearest line another one begins; lines of another wing stay out of it
  const later = ({ mats: [mat] }: Laid): number =>
    mat === undefined ? Infinity : dot(mat.centre, run) - dot(first.centre, run);
  const beside = lines.filter((it) => Math.abs(later(it)) <= NEAR);
  const inOrder = beside.toSorted((a, b) => a.figures.from - b.figures.from);
  const room = Math.min(...inOrder.map((it) => it.figures.first)) * 0.3;
  const back = Math.min(0, ...inOrder.map(later)) - halfRun - Math.min(2.2 * view.ratio, Math.max(0, room));
  const edge = stepped(stepped(first.centre, run, back), step, -halfStep);
  const wall = stepped(edge, step, -nearest.figures.from);
  const at = (from: number): Point => stepped(edge, step, from - nearest.figures.from);
  const links = inOrder.slice(1).flatMap(({ figures }, index): readonly Link[] => {
    const before = inOrder[index]?.figures.from ?? 0;
    return figures.from - before < 1 ? [] : [{ from: at(before), to: at(figures.from) }];
  });
  return withinWalls(hall, isOnWall(hall, wall) ? [{ from: wall, to: edge }, ...links] : links);
}

function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

/** Up to where it would leave the floor, as it does past the end of a wing. */
function withinWalls(hall: Hall, links: readonly Link[]): readonly Link[] {
  const outside = links.findIndex((link) => !onFloor(hall, link.to));
  return outside < 0 ? links : links.slice(0, outside);
}

function halves({ mat }: Hall, angle: number, run: Point): readonly [number, number] {
  const length = rotateAboutOrigin([1, 0], angle);
  const lengthwise = Math.abs(length[0] * run[0] + length[1] * run[1]) > 0.5;
  return lengthwise ? [mat.length / 2, mat.width / 2] : [mat.width / 2, mat.length / 2];
}

function isOnWall({ outline }: Hall, point: Point): boolean {
  return edgesOf(outline).some(([a, b]) => pointToSegment(point, a, b) <= ON_WALL);
}

/** Ticks for every link; a figure where the length changes, so that equal ones are said once. */
function linkMarks(links: readonly Link[], view: PlanView, units: LengthUnits): readonly Mark[] {
  return links.flatMap((link, index): readonly Mark[] => {
    const [from, to] = [onPaper(view, link.from), onPaper(view, link.to)];
    const text = drawnLength(lengthOf(link), units);
    const before = links[index - 1];
    const said = before === undefined || Math.abs(lengthOf(before) - lengthOf(link)) >= 1;
    const room = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const fits = textBox({ text, size: SIZE, weight: "regular" }).width < room;
    const turn = readableTurn([to[0] - from[0], to[1] - from[1]]);
    const figure = said && fits ? [centredText(text, middleOf(from, to), SIZE, turn)] : [];
    return [hair([from, to]), tick(from), tick(to), ...figure];
  });
}

function lengthOf({ from, to }: Link): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
