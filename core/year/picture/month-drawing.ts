import type { PictureDay, PictureMonth } from "./year-picture.ts";
import type { Drawing, Shape } from "./shape.ts";

export const CELL = { width: 9.4, height: 8 } as const;
const HEAD = 10.5;
const WEEKS = 6;

/**
 * A month as a small sheet. A session is its letter in a thick box; one that falls out is its letter struck through;
 * a public holiday has a black corner, school holidays a line below, her time off dashes through the day.
 */
export function monthDrawing(month: PictureMonth, weekdays: readonly string[]): Drawing {
  const width = CELL.width * 7;
  const height = HEAD + CELL.height * WEEKS;
  return {
    width,
    height,
    shapes: [
      text(0, 4.2, 4, month.title, "start", true),
      ...weekdays.map((name, at) => text((at + 0.5) * CELL.width, 9.2, 2.6, name, "middle", false)),
      ...month.days.flatMap(dayShapes),
    ],
  };
}

function dayShapes(day: PictureDay): readonly Shape[] {
  const x = day.column * CELL.width;
  const y = HEAD + day.row * CELL.height;
  const { width, height } = CELL;
  const marked = new Set(day.marks);
  const held = day.held.length > 0;
  return [
    box(x, y, 0.15),
    text(x + 0.8, y + 2.9, 2.5, String(day.day), "start", false),
    ...(marked.has("public holiday") ? [{ kind: "corner" as const, x: x + width, y, size: 2.4 }] : []),
    ...(marked.has("time off") ? [line([x + 0.8, y + 3.9], [x + width - 0.8, y + 3.9], 0.35, true)] : []),
    ...(marked.has("school holiday")
      ? [line([x + 0.5, y + height - 0.7], [x + width - 0.5, y + height - 0.7], 0.7, false)]
      : []),
    ...(held ? [box(x + 0.35, y + 0.35, 0.7, 0.35)] : []),
    ...letters(day, x, y),
  ];
}

/** Letters of those held stand bold, of those that fall out struck through; more than four are counted. */
function letters({ held, lost }: PictureDay, x: number, y: number): readonly Shape[] {
  const all = [
    ...held.map((letter) => ({ letter, out: false })),
    ...lost.map((letter) => ({ letter, out: true })),
  ];
  const base = y + 6.7;
  if (all.length > MOST_LETTERS || all.some(({ letter }) => letter.length > 1)) {
    const counted = `${held.length} of ${all.length}`;
    return all.length === 0 ? [] : [text(x + CELL.width / 2, base, 2.4, counted, "middle", held.length > 0)];
  }
  const step = all.length > 3 ? 2 : 2.4;
  const start = x + CELL.width / 2 - ((all.length - 1) * step) / 2;
  return all.flatMap(({ letter, out }, at) => {
    const middle = start + at * step;
    const mark = text(middle, base, all.length > 3 ? 2.6 : 3, letter, "middle", !out);
    return out ? [mark, line([middle - 1.5, base - 1.05], [middle + 1.5, base - 1.05], 0.35, false)] : [mark];
  });
}

const MOST_LETTERS = 4;

function box(x: number, y: number, width: number, inset = 0): Shape {
  return {
    kind: "box",
    x,
    y,
    width: CELL.width - 2 * inset,
    height: CELL.height - 2 * inset,
    filled: false,
    line: width,
  };
}

export function line(
  from: readonly [number, number],
  to: readonly [number, number],
  width: number,
  dashed: boolean,
): Shape {
  return { kind: "line", from, to, line: width, dashed };
}

export function text(
  x: number,
  y: number,
  size: number,
  words: string,
  anchor: "start" | "middle" | "end",
  bold: boolean,
): Shape {
  return { kind: "text", x, y, size, text: words, bold, anchor };
}
