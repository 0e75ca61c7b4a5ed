import type { Point, Polygon } from "#kernels/geometry";
import { type LengthUnits, MM_PER_FOOT } from "#core/words";
import { type AreaKind, areaMarks } from "./area-marks.ts";
import type { DrawingScale } from "./drawing-scale.ts";
import type { HallSheet } from "./hall-sheet-types.ts";
import type { Mark, TextMark } from "./paper-types.ts";
import { textWidth } from "./text-width.ts";

export type Strip = { readonly marks: readonly Mark[]; readonly height: number };

/** Of the middle line of a way: long strokes, so that it is no edge of anything. */
export const WAY_DASH = [1.2, 1];

const SIZE = 7.5;
const ROW = 5;
const SWATCH = 7;

/** What each pattern means, in rows no wider than so many millimetres, the first row's middle 2.5 mm below `at`. */
export function keyMarks({ hall, plan, ways }: HallSheet, at: Point, width: number): Strip {
  const kinds: readonly (readonly [AreaKind | "mat" | "way", string, boolean])[] = [
    ["mat", "mat, the bar at the head", plan.count > 0],
    ["stays", "stays", hall.fixtures.some((it) => !it.movable)],
    ["moves", "can be moved", hall.fixtures.some((it) => it.movable)],
    ["clear", "keep clear", hall.keepClear.length > 0],
    ["teacher", "teacher", hall.teacher !== null],
    ["way", "way to a door", ways.length > 0],
  ];
  const marks: Mark[] = [];
  let [x, row] = [0, 0];
  for (const [kind, says] of kinds.filter(([, , there]) => there)) {
    const needed = SWATCH + 1.5 + textWidth(says, SIZE, "regular") + 5;
    if (x > 0 && x + needed > width + 5) [x, row] = [0, row + 1];
    const middle = at[1] + row * ROW + 2.5;
    marks.push(...swatch(kind, [at[0] + x, middle]), sideText(says, [at[0] + x + SWATCH + 1.5, middle]));
    x += needed;
  }
  return { marks, height: (row + 1) * ROW };
}

function swatch(kind: AreaKind | "mat" | "way", [x, y]: Point): readonly Mark[] {
  const box = rectangle(x, y - 1.6, SWATCH, 3.2);
  if (kind === "way")
    return [
      {
        kind: "line",
        points: [
          [x, y],
          [x + SWATCH, y],
        ],
        width: 0.18,
        dash: WAY_DASH,
      },
    ];
  if (kind !== "mat") return areaMarks(kind, box);
  return [
    { kind: "shape", points: box, fill: "paper", width: 0.3 },
    { kind: "shape", points: rectangle(x, y - 1.6, 0.6, 3.2), fill: "ink", width: 0 },
  ];
}

function rectangle(x: number, y: number, width: number, height: number): Polygon {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** Begins at a point, its capitals' middle level with it. */
function sideText(text: string, [x, y]: Point): TextMark {
  return { kind: "text", text, at: [x, y + 0.9], size: SIZE, weight: "regular", anchor: "start", turn: 0 };
}

const metres = [0.5, 1, 2, 5, 10, 20, 50, 100];
const feet = [2, 5, 10, 20, 50, 100, 200];

/** The longest round length of at most 50 mm of paper, in four parts, and what the scale is, beside it or under it. */
export function scaleBarMarks(
  at: Point,
  width: number,
  { ratio, says }: DrawingScale,
  paper: string,
  units: LengthUnits,
): Strip {
  const step = units === "metric" ? 1000 : MM_PER_FOOT;
  const lengths = units === "metric" ? metres : feet;
  const length = lengths.filter((it) => (it * step) / ratio <= 50).at(-1) ?? lengths[0] ?? 1;
  const bar = (length * step) / ratio;
  const parts = [0, 1, 2, 3].map(
    (part): Mark => ({
      kind: "shape",
      points: rectangle(at[0] + (bar / 4) * part, at[1] + 1.5, bar / 4, 1.6),
      fill: part % 2 === 0 ? "ink" : "paper",
      width: 0.2,
    }),
  );
  const figure = `${length} ${units === "metric" ? "m" : "ft"}`;
  const scale = `Scale ${says} on ${paper}, printed at 100 %`;
  const beside = `${figure}. ${scale}`;
  const right: Point = [at[0] + bar + 2, at[1] + 2.3];
  if (bar + 2 + textWidth(beside, SIZE, "regular") <= width)
    return { marks: [...parts, sideText(beside, right)], height: ROW };
  return {
    marks: [...parts, sideText(figure, right), sideText(scale, [at[0], at[1] + 2.3 + ROW * 0.9])],
    height: ROW * 1.9,
  };
}
