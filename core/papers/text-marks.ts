import type { Point } from "#kernels/geometry";
import type { TextMark, Weight } from "./paper-types.ts";
import { MM_PER_POINT, textWidth } from "./text-width.ts";

/** Of the face, in ems: from the base line to the top of a capital. */
const CAPITAL = 0.668;

/** A short text with its middle at a point, turned clockwise by degrees, over bare paper. */
export function centredText(
  text: string,
  middle: Point,
  size: number,
  turn = 0,
  weight: Weight = "regular",
): TextMark {
  const drop = (CAPITAL * size * MM_PER_POINT) / 2;
  const radians = (turn * Math.PI) / 180;
  const at: Point = [middle[0] - drop * Math.sin(radians), middle[1] + drop * Math.cos(radians)];
  return { kind: "text", text, at, size, weight, anchor: "middle", turn, onPaper: true };
}

/** Degrees clockwise at which text along a way on the paper is never upside down and reads from the right. */
export function readableTurn([x, y]: Point): number {
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  const turned = ((((degrees + 90) % 180) + 180) % 180) - 90;
  // upright text is turned one way whichever rounding its wall has
  return turned > 90 - 1e-6 ? -90 : turned;
}

/** The box of a text mark: width along its line, height across it, in millimetres, with a hair of paper round it. */
export function textBox({ text, size, weight }: Pick<TextMark, "text" | "size" | "weight">) {
  return { width: textWidth(text, size, weight) + 0.8, height: size * MM_PER_POINT * 0.95 };
}
