// Example: an L of 10 × 8 m whose missing corner is 4 × 3 m is drawn; one of 11 × 3 m is refused at its first side.
// Invariant: an outline is given only when every side was read and the cut lies inside the room.
import { lShapedFloor, rectangleFloor } from "#core/hall";
import { type LengthUnits, parseLength, type Problem, problem, type Result } from "#core/words";
import type { Polygon } from "#kernels/geometry";

export type Side<Name extends string = string> = {
  readonly name: Name;
  readonly label: string;
  readonly help?: string;
};

/** A shape that is known by a few lengths, in millimetres in the order of `sides`. */
export type Sides = {
  readonly sides: readonly Side[];
  readonly draw: (lengths: readonly number[]) => Polygon;
  /** what is wrong with lengths that can be read, by side */
  readonly check: (lengths: readonly number[]) => Readonly<Record<string, Problem>>;
};

export const rectangleSides: Sides = {
  sides: [
    { name: "width", label: "Width", help: "left to right on the drawing" },
    { name: "depth", label: "Length", help: "bottom to top on the drawing" },
  ],
  draw: ([width = 0, depth = 0]) => rectangleFloor(width, depth),
  check: () => ({}),
};

export const lSides: Sides = {
  sides: [
    { name: "width", label: "Whole width", help: "left to right, at the wide end" },
    { name: "depth", label: "Whole length", help: "bottom to top, along the long side" },
    { name: "cutWidth", label: "Missing corner, width" },
    { name: "cutDepth", label: "Missing corner, length" },
  ],
  draw: ([width = 0, depth = 0, cutWidth = 0, cutDepth = 0]) =>
    lShapedFloor({ width, depth, cutWidth, cutDepth }),
  check: ([width = 0, depth = 0, cutWidth = 0, cutDepth = 0]) => ({
    ...(cutWidth >= width ? { cutWidth: cutTooLarge("cutWidth", "width") } : {}),
    ...(cutDepth >= depth ? { cutDepth: cutTooLarge("cutDepth", "length") } : {}),
  }),
};

export type SidesRead =
  | { readonly ok: true; readonly outline: Polygon }
  | { readonly ok: false; readonly problems: Readonly<Record<string, Problem>> };

/** The outline from what was typed, or the first problem of each side. */
export function readSides(
  shape: Sides,
  typed: Readonly<Record<string, string>>,
  units: LengthUnits,
): SidesRead {
  const read = shape.sides.map(({ name }) => ({ name, length: parseLength(typed[name] ?? "", units, name) }));
  const problems = Object.fromEntries(read.flatMap(({ name, length }) => sideProblem(name, length)));
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const lengths = read.map(({ length }) => (length.ok ? length.value : 0));
  const wrong = shape.check(lengths);
  if (Object.keys(wrong).length > 0) return { ok: false, problems: wrong };
  return { ok: true, outline: shape.draw(lengths) };
}

function sideProblem(name: string, length: Result<number>): readonly (readonly [string, Problem])[] {
  if (!length.ok) return length.problems.slice(0, 1).map((it) => [name, it] as const);
  if (length.value >= 10) return [];
  const next = "Give the length that you measured.";
  return [[name, problem("wall-too-short", name, "A wall is at least 1 cm long.", next)]];
}

function cutTooLarge(place: string, side: string): Problem {
  return problem(
    "cut-too-large",
    place,
    `The missing corner is as long as the whole ${side} or longer.`,
    "Give the length of what is missing, not of what is there.",
  );
}
