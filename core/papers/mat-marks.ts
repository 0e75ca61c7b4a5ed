import { type ArrangedMatPlan, type Hall, hallFrame, placeOfMat, sightOptions } from "#core/hall";
import { type Point, type Polygon, rotateAboutOrigin } from "#kernels/geometry";
import type { Mark } from "./paper-types.ts";
import { middleOf, type PlanView, shapeOnPaper, wayBetween } from "./plan-view.ts";
import { centredText, readableTurn } from "./text-marks.ts";
import { MM_PER_POINT, textWidth } from "./text-width.ts";

/** Every mat with its number and a bar at its head end; those in somebody's way have a thick edge. */
export function matMarks(
  view: PlanView,
  hall: Hall,
  plan: ArrangedMatPlan,
  inTheWay: readonly number[],
): readonly Mark[] {
  const thick = new Set(inTheWay);
  const style = numberStyle(view, hall, plan);
  return plan.mats.flatMap((placed, index): readonly Mark[] => {
    const corners = shapeOnPaper(view, matCorners(hall, plan, placed));
    const [a = origin, b = origin, c = origin, d = origin] = corners;
    const number = style === null ? [] : [numberMark(matNumber(plan, index), corners, style)];
    return [
      { kind: "shape", points: corners, fill: "paper", width: thick.has(index) ? 0.9 : 0.3 },
      { kind: "shape", points: [a, b, between(b, c, 0.06), between(a, d, 0.06)], fill: "ink", width: 0 },
      ...number,
    ];
  });
}

const origin: Point = [0, 0];

/** "2.3" for mat 3 of line 2, as the set-out counts; "17" in a plan without lines. */
export function matNumber(plan: ArrangedMatPlan, index: number): string {
  const { line, place } = placeOfMat(plan, index);
  return line === 0 ? String(place) : `${line}.${place}`;
}

/** The four corners in the hall, the two at the head end first. */
function matCorners(hall: Hall, plan: ArrangedMatPlan, placed: ArrangedMatPlan["mats"][number]): Polygon {
  const ahead = rotateAboutOrigin([hall.mat.length / 2, 0], placed.angle);
  const left = rotateAboutOrigin([0, hall.mat.width / 2], placed.angle);
  const sign = headSign(hall, plan, placed.centre, ahead);
  const corner = (along: number, across: number): Point => [
    placed.centre[0] + ahead[0] * along * sign + left[0] * across,
    placed.centre[1] + ahead[1] * along * sign + left[1] * across,
  ];
  return [corner(1, 1), corner(1, -1), corner(-1, -1), corner(-1, 1)];
}

/**
 * Heads lie towards the front, and at the left where mats lie from left to right; in two banks towards the middle;
 * round a teacher, whom the feet point at, away from her.
 */
function headSign(hall: Hall, plan: ArrangedMatPlan, centre: Point, ahead: Point): 1 | -1 {
  const dot = (way: Point): number => ahead[0] * way[0] + ahead[1] * way[1];
  const { heads = "near", rowsTowards, teacher } = sightOptions(plan);
  if (rowsTowards === "teacher" && teacher !== undefined) {
    const towards = dot([teacher[0] - centre[0], teacher[1] - centre[1]]) >= 0;
    return towards === (heads === "near") ? 1 : -1;
  }
  const { front, right } = hallFrame(hall);
  // a tenth of a degree: nearer to square than anybody can see
  const towards = Math.abs(dot(front)) > hall.mat.length / 2000 ? dot(front) : -dot(right);
  return towards >= 0 ? 1 : -1;
}

type NumberStyle = { readonly size: number; readonly across: boolean; readonly along: boolean };

/** From 8 pt down to 5, as large as every mat has room for across it or along it; none where even 5 pt are too large. */
function numberStyle(view: PlanView, hall: Hall, plan: ArrangedMatPlan): NumberStyle | null {
  const longest = Math.max(0, ...plan.mats.map((_, index) => textWidth(matNumber(plan, index), 1, "bold")));
  const [long, wide] = [hall.mat.length / view.ratio, hall.mat.width / view.ratio];
  for (const size of [8, 7.5, 7, 6.5, 6, 5.5, 5]) {
    const [width, height] = [longest * size, size * MM_PER_POINT * 0.8];
    const across = width < wide - 0.9 && height < long - 1;
    const along = width < long - 2 && height < wide - 0.6;
    if (across || along) return { size, across, along };
  }
  return null;
}

/** As level as the room in the mat allows. */
function numberMark(text: string, corners: Polygon, { size, across, along }: NumberStyle): Mark {
  const [a = origin, b = origin, c = origin] = corners;
  const turns = [...(across ? [wayBetween(a, b)] : []), ...(along ? [wayBetween(b, c)] : [])].map(
    readableTurn,
  );
  const [turn = 0] = turns.toSorted((one, other) => Math.abs(one) - Math.abs(other));
  return { ...centredText(text, middleOf(a, c), size, turn, "bold"), onPaper: false };
}

function between(from: Point, to: Point, share: number): Point {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
