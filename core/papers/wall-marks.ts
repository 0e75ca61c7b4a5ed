import { type Hall, hallFrame, outwardOf, wallInWords, wallsOf } from "#core/hall";
import type { Point } from "#kernels/geometry";
import type { LengthUnits } from "#core/words";
import type { Mark } from "./paper-types.ts";
import { middleOf, onPaper, type PlanView, stepped } from "./plan-view.ts";
import { drawnLength } from "./said-length.ts";
import { centredText, readableTurn, textBox } from "./text-marks.ts";

/** What a plan needs round the floor for its dimensions, in millimetres of paper. */
export const ROUND_THE_PLAN = 9;

const OUT = 5.5;
const SIZE = 7.5;

/** The walls as one thick line. */
export function wallMarks(view: PlanView, { outline }: Hall): readonly Mark[] {
  const points = outline.map((corner) => onPaper(view, corner));
  return [{ kind: "shape", points, fill: "none", width: 0.8 }];
}

/** The length of every wall that has room for it, outside the floor, with the side that the set-out calls it by. */
export function wallDimensionMarks(view: PlanView, hall: Hall, units: LengthUnits): readonly Mark[] {
  const { outline } = hall;
  const frame = hallFrame(hall);
  return wallsOf(outline).flatMap((wall, index): readonly Mark[] => {
    const [x, y] = outwardOf(outline, index);
    const out: Point = [x, 0 - y];
    const [from, to] = [onPaper(view, wall.from), onPaper(view, wall.to)];
    const room = wall.length / view.ratio;
    const figure = drawnLength(wall.length, units);
    const named = `${wallInWords(outline, frame, index).replace(/^the /, "")} ${figure}`;
    const text = [named, figure].find(
      (it) => textBox({ text: it, size: SIZE, weight: "regular" }).width < room,
    );
    if (text === undefined) return [];
    const [a, b] = [stepped(from, out, OUT), stepped(to, out, OUT)];
    return [
      hair([stepped(from, out, 1), stepped(from, out, OUT + 1)]),
      hair([stepped(to, out, 1), stepped(to, out, OUT + 1)]),
      hair([a, b]),
      tick(a),
      tick(b),
      centredText(text, middleOf(a, b), SIZE, readableTurn([b[0] - a[0], b[1] - a[1]])),
    ];
  });
}

/** How many walls are too short on the paper for their figure. */
export function unfigured(hall: Hall, ratio: number, units: LengthUnits): readonly string[] {
  return wallsOf(hall.outline).flatMap(({ name, length }) => {
    const text = drawnLength(length, units);
    return textBox({ text, size: SIZE, weight: "regular" }).width < length / ratio ? [] : [`${name} ${text}`];
  });
}

export function hair(points: readonly Point[]): Mark {
  return { kind: "line", points, width: 0.12 };
}

/** An architect's slanting tick. */
export function tick([x, y]: Point): Mark {
  return {
    kind: "line",
    points: [
      [x - 0.9, y + 0.9],
      [x + 0.9, y - 0.9],
    ],
    width: 0.25,
  };
}

/** The letters of the corners, inside the floor: all where there is room, and always those that the words name. */
export function cornerMarks(view: PlanView, { outline }: Hall, words: string): readonly Mark[] {
  const walls = wallsOf(outline);
  return walls.flatMap((wall, index): readonly Mark[] => {
    const before = walls[(index + walls.length - 1) % walls.length] ?? wall;
    const name = wall.name.split("–")[0] ?? "";
    const roomy = Math.min(wall.length, before.length) / view.ratio >= 4;
    if (!roomy && !new RegExp(`(corner ${name}|[^A-Z]${name}–|–${name})(?![A-Z])`).test(words)) return [];
    const [one, other] = [
      outwardOf(outline, index),
      outwardOf(outline, (index + walls.length - 1) % walls.length),
    ];
    const at = onPaper(view, wall.from);
    const out: Point = [at[0] + (one[0] + other[0]) * 2.1, at[1] - (one[1] + other[1]) * 2.1];
    return [centredText(name, out, 6.5, 0, "bold")];
  });
}
