import { countText } from "../date-text.ts";
import { CELL, line, monthDrawing, text } from "./month-drawing.ts";
import { type Drawing, moved, type Shape } from "./shape.ts";
import type { YearPicture } from "./year-picture.ts";

const MARGIN = 9;
const ACROSS = 4;
const STEP = { x: CELL.width * 7 + 5, y: 62 } as const;
const LEGEND_LINE = 5;

/** The whole year on one sheet, a landscape A4 for twelve months and up to three classes: months, then what the signs mean. */
export function yearDrawing(picture: YearPicture): Drawing {
  const rows = Math.ceil(picture.months.length / ACROSS);
  const width = 2 * MARGIN + ACROSS * STEP.x - 5;
  const months = picture.months.flatMap((month, at) => {
    const x = MARGIN + (at % ACROSS) * STEP.x;
    const y = MARGIN + 8 + Math.floor(at / ACROSS) * STEP.y;
    return monthDrawing(month, picture.weekdays).shapes.map((it) => moved(it, x, y));
  });
  const below = MARGIN + 8 + rows * STEP.y;
  const legend = legendShapes(picture, below);
  const lines = Math.ceil(picture.classes.length / 2) + 1;
  return {
    width,
    height: below + lines * LEGEND_LINE + MARGIN,
    shapes: [text(MARGIN, MARGIN + 3, 5.5, picture.title, "start", true), ...months, ...legend],
  };
}

function legendShapes({ classes }: YearPicture, top: number): readonly Shape[] {
  const half = (ACROSS * STEP.x) / 2;
  const names = classes.map(({ letter, name, sessions }, at) => {
    const words = `${letter}  ${short(name)}: ${countText(sessions, "session")}`;
    return text(
      MARGIN + (at % 2) * half,
      top + 3 + Math.floor(at / 2) * LEGEND_LINE,
      3.4,
      words,
      "start",
      true,
    );
  });
  const y = top + 3 + Math.ceil(classes.length / 2) * LEGEND_LINE;
  return [...names, ...signs(y)];
}

/** Each sign beside its words, in one line. */
function signs(y: number): readonly Shape[] {
  const words = (index: number, says: string): Shape => text(signAt(index) + 8, y, 3, says, "start", false);
  return [
    { kind: "box", x: signAt(0), y: y - 3.4, width: 6, height: 4.4, filled: false, line: 0.7 },
    words(0, "sessions, by letter"),
    text(signAt(1) + 3, y, 3, "A", "middle", false),
    line([signAt(1) + 1.5, y - 1.05], [signAt(1) + 4.5, y - 1.05], 0.35, false),
    words(1, "falls out"),
    { kind: "corner", x: signAt(2) + 6, y: y - 3.4, size: 3 },
    words(2, "public holiday"),
    line([signAt(3), y - 1.2], [signAt(3) + 6, y - 1.2], 0.35, true),
    words(3, "time off"),
    line([signAt(4), y - 0.4], [signAt(4) + 6, y - 0.4], 0.7, false),
    words(4, "school holidays"),
  ];
}

function signAt(index: number): number {
  return MARGIN + index * 54;
}

const LONGEST_NAME = 44;

function short(name: string): string {
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
}
