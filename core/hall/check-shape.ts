import { crossesItself, type Polygon } from "#kernels/geometry";
import { problem, type Problem } from "#core/words";
import { cornerName, wallName } from "./corner-names.ts";
import { cross, subtracted } from "./vectors.ts";

/**
 * A curved wall from somebody's drawing may have hundreds of corners. With 500 the most mats in lines of five floors,
 * drums, waves, teeth and steps, took 0.07 to 0.5 s.
 */
export const MOST_CORNERS = 500;
/** What stands on a floor is simpler, and there may be 200 of it. */
const MOST_SIDES = 200;

/** How a shape is spoken of: its place in the document, its name, and the word for one of its sides. */
export type ShapeWords = { readonly place: string; readonly name: string; readonly side: "wall" | "side" };

/**
 * What is wrong with one outline by itself, in whole millimetres: too few or too many corners, the same corner
 * twice in a row, no area, sides that cross. Problems: "not-drawn", "outline-corners", "outline-repeated-corner",
 * "outline-flat", "outline-crosses-itself".
 */
export function shapeProblems(outline: Polygon, words: ShapeWords): readonly Problem[] {
  const count = countProblem(outline, words);
  if (count !== undefined) return [count];
  const repeated = repeatedCorners(outline, words);
  if (repeated.length > 0) return repeated;
  return onOneLine(outline) ? [flatProblem(words)] : crossingProblems(outline, words);
}

function countProblem(outline: Polygon, { place, name, side }: ShapeWords): Problem | undefined {
  const count = outline.length;
  const corners = `${count} ${count === 1 ? "corner" : "corners"}`;
  if (count === 0) {
    return problem("not-drawn", place, `${name} is not drawn yet.`, "Choose its shape and type its lengths.");
  }
  if (count < 3) {
    const says = `${name} has only ${corners}.`;
    return problem("outline-corners", place, says, "Give at least 3 corners, in order round it.");
  }
  const most = side === "wall" ? MOST_CORNERS : MOST_SIDES;
  if (count <= most) return undefined;
  const next = `Give at most ${most}: leave out corners that a tape would not notice.`;
  return problem("outline-corners", place, `${name} has ${corners}.`, next);
}

function repeatedCorners(outline: Polygon, { place, name }: ShapeWords): readonly Problem[] {
  return outline.flatMap((corner, index) => {
    const [x, y] = outline.at(index - 1) ?? corner;
    if (corner[0] !== x || corner[1] !== y) return [];
    const closing = index === 0;
    const twice = closing ? outline.length - 1 : index;
    const before = cornerName(closing ? 0 : index - 1);
    const says = `Corner ${cornerName(twice)} of ${midSentence(name)} is the same as corner ${before}.`;
    const next = closing
      ? "Leave the last one out: the outline closes by itself."
      : "Leave one of them out, or measure it again.";
    return [problem("outline-repeated-corner", `${place}[${twice}]`, says, next)];
  });
}

function onOneLine(outline: Polygon): boolean {
  const [first, second] = outline;
  if (first === undefined || second === undefined) return true;
  return outline.every((corner) => cross(subtracted(second, first), subtracted(corner, first)) === 0);
}

function flatProblem({ place, name, side }: ShapeWords): Problem {
  const says = `${name} has no area: its ${side}s lie on one line.`;
  return problem("outline-flat", place, says, "Give it some width.");
}

function crossingProblems(outline: Polygon, { place, name, side }: ShapeWords): readonly Problem[] {
  const crossing = crossesItself(outline);
  if (crossing === null) return [];
  const [first, second] = crossing.map((index) => wallName(outline, index));
  const says = `${name} crosses itself: the ${side} ${first} meets the ${side} ${second}.`;
  const next = `Move a corner of one of these ${side}s, or put the corners in order round it.`;
  return [problem("outline-crosses-itself", place, says, next)];
}

function midSentence(name: string): string {
  return name.startsWith("The ") ? `the ${name.slice(4)}` : name;
}
