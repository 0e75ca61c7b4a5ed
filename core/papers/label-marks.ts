import { boundsOf, type Point, type Polygon } from "#kernels/geometry";
import type { HallSheet } from "./hall-sheet-types.ts";
import type { Mark, TextMark } from "./paper-types.ts";
import { centredText, textBox } from "./text-marks.ts";

const SIZE = 7;

/**
 * What each thing is called: its short name with its label where that has room, else the short name by itself. A name
 * that would lie on another one, or on a figure, moves aside as long as it stays in the room of the drawing.
 */
export function labelMarks(
  cut: (shape: Polygon) => Polygon,
  { hall, named }: HallSheet,
  drawnBefore: readonly Mark[],
  room: Box,
): readonly Mark[] {
  const areas = [
    ...hall.keepClear.map(({ label, outline }, index) => ({
      name: named.keepClear[index] ?? "",
      label,
      outline,
    })),
    ...hall.fixtures.map(({ label, outline }, index) => ({
      name: named.fixtures[index] ?? "",
      label,
      outline,
    })),
  ];
  const teacher =
    hall.teacher === null ? [] : [{ name: "", label: "Teacher", outline: hall.teacher.outline }];
  const taken: Box[] = drawnBefore.flatMap((mark) => (mark.kind === "text" ? [boxOf(mark)] : []));
  const drawn = [...areas.filter((it) => it.name !== ""), ...teacher].filter(
    (it) => cut(it.outline).length > 2,
  );
  return drawn.map(({ name, label, outline }) => {
    const mark = labelMark(cut(outline), name, label);
    const moved =
      asides(mark).find((it) => isWithin(boxOf(it), room) && taken.every((box) => apart(boxOf(it), box))) ??
      mark;
    taken.push(boxOf(moved));
    return moved;
  });
}

/** On the paper, in millimetres. */
export type Box = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

function boxOf(mark: TextMark): Box {
  const { width, height } = textBox(mark);
  const [x, y] = mark.at;
  if (mark.turn !== 0)
    return { left: x - height, right: x + height * 0.3, top: y - width / 2, bottom: y + width / 2 };
  return { left: x - width / 2, right: x + width / 2, top: y - height * 0.8, bottom: y + height * 0.3 };
}

function apart(one: Box, other: Box): boolean {
  return (
    one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top
  );
}

function isWithin(box: Box, room: Box): boolean {
  return box.left >= room.left && box.right <= room.right && box.top >= room.top && box.bottom <= room.bottom;
}

/** Where it is, then one and two of its heights up and down, then one of its widths to either side. */
function asides(mark: TextMark): readonly TextMark[] {
  const { width, height } = textBox(mark);
  const steps: readonly Point[] = [
    [0, 0],
    [0, -height],
    [0, height],
    [width, 0],
    [-width, 0],
    [0, -2 * height],
    [0, 2 * height],
  ];
  return steps.map(([x, y]) => ({ ...mark, at: [mark.at[0] + x, mark.at[1] + y] }));
}

function labelMark(shape: Polygon, name: string, label: string): TextMark {
  const { left, right, top, bottom } = boundsOf(shape);
  const [width, height] = [right - left, top - bottom];
  const middle: Point = name.startsWith("D") ? meanOf(shape) : [(left + right) / 2, (top + bottom) / 2];
  const whole = `${name} ${label}`.trim();
  const box = textBox({ text: whole, size: SIZE, weight: "regular" });
  if (box.width < width && box.height < height) return centredText(whole, middle, SIZE);
  if (box.width < height && box.height < width) return centredText(whole, middle, SIZE, -90);
  return centredText(name === "" ? whole : name, middle, SIZE, 0, "bold");
}

/** Inside a quarter circle, where the middle of its bounds may be at its edge. */
function meanOf(shape: Polygon): Point {
  const sum = shape.reduce<Point>(([x, y], corner) => [x + corner[0], y + corner[1]], [0, 0]);
  return [sum[0] / shape.length, sum[1] / shape.length];
}
