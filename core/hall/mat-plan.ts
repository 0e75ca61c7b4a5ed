import { quarterTurnAngle } from "#kernels/geometry";
import { type Floor, linesPlan, type LinesOptions } from "#kernels/packing";
import { allowedLines } from "./allowed-lines.ts";
import type { Hall } from "./hall.ts";
import { hallFrame } from "./hall-frame.ts";
import { layLines } from "./lay-lines.ts";
import type { MatPlan } from "./mat-plan-types.ts";
import { setOut } from "./set-out.ts";

/**
 * The most mats in straight parallel lines on a sound hall, where each lies and how to set them out. The teacher's
 * zone is kept clear like the others. Lengths in millimetres, angles in degrees; the method is the packing kernel's.
 * Throws where the plan breaks its own rules, which would be a fault of ours and not of the hall.
 */
export function matPlan(hall: Hall, options: LinesOptions = {}): MatPlan {
  const floor = floorToFill(hall);
  const { axes, length } = waysOf(hall);
  const found = linesPlan(floor, hall.mat, hall.gaps, axes, { ...options, ...length });
  const exact = layLines(hall, found.lines, found.direction, hallFrame(hall));
  const laid = allowedLines(hall, floor, exact);
  const mats = laid.lines.flat();
  if (mats.length !== found.count) throw new Error(`${mats.length} mats where ${found.count} were found`);
  const { count, bound, proven, axis, steps } = found;
  return { arrangement: "lines", count, bound, proven, axis, mats, setOut: setOut(hall, laid), steps };
}

/** A length that has to lie one way settles the axis: the quarter turn that it lies along or across. */
function waysOf({ axis, lengthAlong }: Pick<Hall, "axis" | "lengthAlong">) {
  if (lengthAlong === undefined) return { axes: axis === "auto" ? axis : [axis], length: {} };
  const quarter = quarterTurnAngle(lengthAlong);
  const turns = Math.round((lengthAlong - quarter) / 90);
  return { axes: [quarter], length: { length: turns % 2 === 0 ? "along" : "across" } as const };
}

/** What mats may lie on and must keep from. */
export function floorToFill(hall: Hall): Floor {
  const { outline, fixtures, keepClear, teacher } = hall;
  return {
    outline,
    fixtures: fixtures.map((it) => it.outline),
    keepClear: [...keepClear, ...(teacher === null ? [] : [teacher])].map((it) => it.outline),
  };
}
