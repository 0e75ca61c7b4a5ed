import { area, quarterTurnAngle, rotateAboutOrigin, wallDirections } from "#kernels/geometry";
import type { ArrangedPlan } from "./arranged-plan.ts";
import { frameOf } from "./frame-of.ts";
import { mustBeSound } from "./must-be-sound.ts";
import { surroundingsOf } from "./obstacles.ts";
import type { Floor, Gaps, Piece, Placed } from "./packing-types.ts";
import { type PhaseColumns, phaseColumns } from "./phase-columns.ts";
import { type AlternatingStack, stackAlternating } from "./stack-alternating.ts";
import type { Frame } from "./strips.ts";

export type StaggeredOptions = {
  /** "half" shifts every other line by half a pitch; "best" by the whole centimetres that hold most */
  readonly shift?: "half" | "best";
  /** rectangles side by side in their lines ("width"), end to end ("length"), or whichever holds more */
  readonly along?: "width" | "length" | "either";
};

export type StaggeredPlan = ArrangedPlan & {
  readonly along: "length" | "width";
  /** millimetres from one rectangle to the next in a line, and between the places of neighbouring lines */
  readonly pitch: number;
  readonly shift: number;
};

/** Phases and shifts are whole numbers of these, in millimetres. */
const CENTIMETRE = 10;

/**
 * Straight lines with places one pitch apart, the same in every other line, and those between shifted so that nobody
 * stands straight behind a neighbour: by half a pitch, or by at least half a rectangle. Places that the floor
 * does not allow stay empty. The first place lies whole centimetres from the left of the turned floor and lines
 * at any offset; of all such plans this is the most, so bound and count are one. Lengths in millimetres, axes
 * in degrees. Throws on sizes that are none.
 */
export function staggeredPlan(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  { shift = "half", along = "width" }: StaggeredOptions = {},
): StaggeredPlan {
  mustBeSound(piece, gaps);
  const wanted = axes === "auto" ? wallDirections(floor.outline) : [...new Set(axes.map(quarterTurnAngle))];
  let best: StaggeredPlan = noneAt(wanted[0] ?? 0);
  if (area(floor.outline) === 0) return best;
  const surroundings = surroundingsOf(floor, gaps.wall);
  for (const axis of wanted)
    for (const direction of [axis, axis + 90])
      for (const way of along === "either" ? (["width", "length"] as const) : [along]) {
        const frame = frameOf(piece, gaps, surroundings, direction, way);
        const other = frameOf(
          piece,
          gaps,
          surroundings,
          direction + 90,
          way === "width" ? "length" : "width",
        );
        const found = bestPhases(frame, other, shift, best.count + 1);
        if (found !== null) best = planOf(frame, direction, way, found);
      }
  return best;
}

function noneAt(direction: number): StaggeredPlan {
  return { direction, along: "width", pitch: 0, shift: 0, lines: [], count: 0, bound: 0, proven: true };
}

type Phases = { readonly stack: AlternatingStack; readonly phase: number; readonly shift: number };

/** Every phase with every shift; null when none holds as many as needed. */
function bestPhases(frame: Frame, across: Frame, shift: "half" | "best", needed: number): Phases | null {
  const { pitchAlong: pitch } = frame;
  const columns = new Map<number, PhaseColumns>();
  const columnsAt = (phase: number): PhaseColumns => {
    const within = phase % pitch;
    const known = columns.get(within) ?? phaseColumns(frame, across, within);
    columns.set(within, known);
    return known;
  };
  let best: Phases | null = null;
  for (let phase = 0; phase < pitch; phase += CENTIMETRE)
    for (const by of shiftsOf(frame, shift)) {
      const stack = stackAlternating(columnsAt(phase), columnsAt(phase + by), frame.pitchAcross);
      if (stack.count >= Math.max(needed, (best?.stack.count ?? 0) + 1)) best = { stack, phase, shift: by };
    }
  return best;
}

/** The half pitch first, so that it wins ties. */
function shiftsOf({ pitchAlong, width }: Frame, shift: "half" | "best"): readonly number[] {
  const shifts = [pitchAlong / 2];
  if (shift === "half") return shifts;
  const least = Math.ceil(width / 2 / CENTIMETRE) * CENTIMETRE;
  for (let by = least; by <= pitchAlong - width / 2; by += CENTIMETRE) shifts.push(by);
  return shifts;
}

function planOf(frame: Frame, direction: number, along: "length" | "width", found: Phases): StaggeredPlan {
  const { stack, shift } = found;
  const angle = (direction + (along === "length" ? 0 : 90)) % 180;
  const lines = stack.lines.map(({ at, places }) =>
    places.map(
      (x): Placed => ({
        centre: rotateAboutOrigin([x + frame.width / 2, at + frame.height / 2], direction),
        angle,
      }),
    ),
  );
  const { count } = stack;
  return { direction, along, pitch: frame.pitchAlong, shift, lines, count, bound: count, proven: true };
}
