import type { ArrangedMatPlan, DoorSwing, Hall } from "#core/hall";
import type { Point, Polygon } from "#kernels/geometry";
import { areaMarks, doorMarks } from "./area-marks.ts";
import { chainMarks } from "./chain-marks.ts";
import type { DrawingScale } from "./drawing-scale.ts";
import type { HallSheet } from "./hall-sheet-types.ts";
import { keyMarks, scaleBarMarks, type Strip, WAY_DASH } from "./key-marks.ts";
import { type Box, labelMarks } from "./label-marks.ts";
import { matMarks } from "./mat-marks.ts";
import { paperNames } from "./paper-size.ts";
import type { Mark, PaperSize } from "./paper-types.ts";
import { cutShape, onPaper, planExtent, type PlanView, planView, shapeOnPaper } from "./plan-view.ts";
import { centredText } from "./text-marks.ts";
import { cornerMarks, ROUND_THE_PLAN, wallDimensionMarks, wallMarks } from "./wall-marks.ts";

/** Least width, so that scale bar and key have room under the plan of a narrow hall. */
const LEAST_WIDTH = 92;

/** The plan with its dimensions, its key and its scale bar: how much paper it takes. */
export function figureSize(
  sheet: HallSheet,
  scale: DrawingScale,
): { readonly width: number; readonly height: number } {
  const { width, height } = planExtent(sheet.hall.outline, scale.ratio);
  const wide = Math.max(width + 2 * ROUND_THE_PLAN, LEAST_WIDTH);
  return {
    width: wide,
    height: height + 2 * ROUND_THE_PLAN + strips(sheet, scale, "letter", [0, 0], wide).height,
  };
}

/** The same drawn with its top left corner at a point, in a box so many millimetres wide. */
export function figureMarks(
  sheet: HallSheet,
  scale: DrawingScale,
  size: PaperSize,
  [left, top]: Point,
  boxWidth: number,
): readonly Mark[] {
  const { width, height } = planExtent(sheet.hall.outline, scale.ratio);
  const view = planView(sheet.hall.outline, scale.ratio, [
    left + (boxWidth - width) / 2,
    top + ROUND_THE_PLAN,
  ]);
  const below = top + height + 2 * ROUND_THE_PLAN;
  const drawingWidth = Math.max(width + 2 * ROUND_THE_PLAN, LEAST_WIDTH);
  const under: Point = [left + (boxWidth - drawingWidth) / 2, below];
  return [...drawnHall(sheet, view), ...strips(sheet, scale, size, under, drawingWidth).marks];
}

/** Scale bar and key, one under the other. */
function strips(sheet: HallSheet, scale: DrawingScale, size: PaperSize, [x, y]: Point, width: number): Strip {
  const bar = scaleBarMarks([x, y], width, scale, paperNames[size], sheet.units);
  const key = keyMarks(sheet, [x, y + bar.height], width);
  return { marks: [...bar.marks, ...key.marks], height: bar.height + key.height };
}

/** What stands outside the walls is drawn so far beyond them, in millimetres of paper. */
const BEYOND = 4;

/** From the paper up: areas, mats, walls, doors, dimensions, names. */
function drawnHall(sheet: HallSheet, view: PlanView): readonly Mark[] {
  const { hall, plan, units } = sheet;
  const cut = (shape: Polygon): Polygon => cutShape(view, hall.outline, shape, BEYOND);
  const isDrawn = ({ hinge, closed, open }: DoorSwing): boolean =>
    [hinge, closed, open].every((point) => cut([point]).length === 1);
  const words = sheet.sections.flatMap((it) => it.items).join(" ");
  const marks = [
    ...(hall.teacher === null ? [] : areaMarks("teacher", cut(hall.teacher.outline))),
    ...middleMarks(cut, plan),
    ...hall.keepClear.flatMap((it) => areaMarks("clear", cut(it.outline))),
    ...hall.fixtures.flatMap((it) => areaMarks(it.movable ? "moves" : "stays", cut(it.outline))),
    ...sheet.ways.map(
      (piece): Mark => ({ kind: "line", points: shapeOnPaper(view, piece), width: 0.18, dash: WAY_DASH }),
    ),
    ...matMarks(view, hall, plan, sheet.inTheWay),
    ...centreMarks(view, plan),
    ...wallMarks(view, hall),
    ...hall.keepClear.flatMap(({ door }) =>
      door !== undefined && isDrawn(door) ? doorMarks(view, door) : [],
    ),
    ...wallDimensionMarks(view, hall, units),
    ...cornerMarks(view, hall, words),
    ...chainMarks(view, hall, plan, units),
  ];
  return [...marks, ...labelMarks(cut, sheet, marks, roomOf(view, hall))];
}

/** The floor's bounds and a little round them. */
function roomOf(view: PlanView, { outline }: Hall): Box {
  const { width, height } = planExtent(outline, view.ratio);
  const [left, top] = [view.left - BEYOND, view.top - BEYOND];
  return { left, top, right: left + width + 2 * BEYOND, bottom: top + height + 2 * BEYOND };
}

/** What two banks leave clear between them. */
function middleMarks(cut: (shape: Polygon) => Polygon, plan: ArrangedMatPlan): readonly Mark[] {
  return plan.arrangement === "facing" && plan.middle !== null
    ? areaMarks("teacher", cut(plan.middle.outline))
    : [];
}

/** Where the string of the rings is held: a cross in a hand's breadth of paper. */
function centreMarks(view: PlanView, plan: ArrangedMatPlan): readonly Mark[] {
  if (plan.arrangement !== "round") return [];
  const [x, y] = onPaper(view, plan.centre);
  const strokes = [
    [
      [x - 2, y],
      [x + 2, y],
    ],
    [
      [x, y - 2],
      [x, y + 2],
    ],
  ] as const;
  return [
    ...strokes.map((points): Mark => ({ kind: "line", points, width: 0.4 })),
    centredText("centre", [x, y + 3.4], 7),
  ];
}
