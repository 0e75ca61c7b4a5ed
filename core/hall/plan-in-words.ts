import { area, boundsOf, type Point, type Polygon } from "#kernels/geometry";
import { formatLength, type LengthUnits } from "#core/words";
import type { ArrangedMatPlan } from "./arrangement/arrangement-types.ts";
import { wallsOf } from "./floor-walls.ts";
import type { Hall } from "./hall.ts";
import { type HallFrame, hallFrame, middleOf } from "./hall-frame.ts";
import { laidWords } from "./laid-words.ts";
import { dot } from "./vectors.ts";

/** What the drawing shows, in one paragraph, for whoever cannot see it. */
export function planInWords(hall: Hall, plan: ArrangedMatPlan, units: LengthUnits = "metric"): string {
  const frame = hallFrame(hall);
  const said = (millimetres: number): string => formatLength(millimetres, units);
  return [
    `${hall.name}, seen from above with the front ${edgeOfPaper(frame.front)}.`,
    floorWords(hall.outline, units, said),
    ...teacherWords(hall, frame),
    ...standingWords(
      "On the floor",
      hall.fixtures.map(
        (it) => `${it.label}${it.movable ? " (can be moved)" : ""}, ${placeWords(it.outline, hall, frame)}`,
      ),
    ),
    ...standingWords(
      "Kept clear",
      hall.keepClear.map((it) => `${it.label}, ${placeWords(it.outline, hall, frame)}`),
    ),
    ...laidWords(hall, plan, units),
  ].join(" ");
}

type Said = (millimetres: number) => string;

function edgeOfPaper([x, y]: Point): string {
  if (Math.abs(y) >= Math.abs(x)) return y > 0 ? "at the top" : "at the bottom";
  return x > 0 ? "on the right" : "on the left";
}

/** 0.09290304 m² to the square foot, exact. */
const SQUARE_MM_PER_SQUARE_FOOT = 92_903.04;

/** More than anybody listens to; a floor with more is drawn from a curve. */
const MOST_WALLS = 40;

function floorWords(outline: Polygon, units: LengthUnits, said: Said): string {
  const walls = wallsOf(outline);
  const size =
    units === "metric"
      ? `${(area(outline) / 1e6).toFixed(1)} m²`
      : `${Math.round(area(outline) / SQUARE_MM_PER_SQUARE_FOOT)} square feet`;
  if (walls.length > MOST_WALLS)
    return `The floor is ${size} between ${walls.length} walls, many of them short.`;
  const lengths = walls.map((wall) => `${wall.name} ${said(wall.length)}`);
  return `The floor is ${size} between ${walls.length} walls: ${lengths.join(", ")}.`;
}

function teacherWords(hall: Hall, frame: HallFrame): readonly string[] {
  if (hall.teacher === null) return [];
  return [`The teacher’s zone is ${placeWords(hall.teacher.outline, hall, frame)}.`];
}

function standingWords(head: string, shapes: readonly string[]): readonly string[] {
  return shapes.length === 0 ? [] : [`${head}: ${shapes.join("; ")}.`];
}

/** "at the front left", "in the middle": by thirds of the hall, as seen facing the front. */
export function placeWords(shape: Polygon, { outline }: Pick<Hall, "outline">, frame: HallFrame): string {
  const depth = thirdOf(shape, outline, frame.front, ["back", "", "front"]);
  const side = thirdOf(shape, outline, frame.right, ["left", "", "right"]);
  const words = [depth, side].filter((word) => word !== "");
  return words.length === 0 ? "in the middle" : `at the ${words.join(" ")}`;
}

function thirdOf(
  shape: Polygon,
  outline: Polygon,
  way: Point,
  names: readonly [string, string, string],
): string {
  const { left, right } = boundsOf(outline.map((corner) => [dot(corner, way), 0]));
  const share = (dot(middleOf(shape), way) - left) / (right - left);
  if (share < 1 / 3) return names[0];
  return share > 2 / 3 ? names[2] : names[1];
}
