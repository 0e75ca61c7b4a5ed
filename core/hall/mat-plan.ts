import { checkPlaced, type Floor, linesPlan, type LinesOptions } from "#kernels/packing";
import type { Hall } from "./hall.ts";
import { hallFrame } from "./hall-frame.ts";
import { layLines } from "./lay-lines.ts";
import type { MatPlan, PlacedMat } from "./mat-plan-types.ts";
import { setOut } from "./set-out.ts";
import { wholeCentimetres } from "./whole-centimetres.ts";

/**
 * The most mats in straight parallel lines on a sound hall, where each lies and how to set them out. The teacher's
 * zone is kept clear like the others. Lengths in millimetres, angles in degrees; the method is the packing kernel's.
 * Throws where the plan breaks its own rules, which would be a fault of ours and not of the hall.
 */
export function matPlan(hall: Hall, options: LinesOptions = {}): MatPlan {
  const floor = floorToFill(hall);
  const axes = hall.axis === "auto" ? hall.axis : [hall.axis];
  const found = linesPlan(floor, hall.mat, hall.gaps, axes, options);
  const exact = layLines(hall, found.lines, found.direction, hallFrame(hall));
  const laid = wholeCentimetres(hall, floor, exact);
  const mats = laid.lines.flat();
  mustBeAllowed(hall, floor, mats, found.count);
  const { count, bound, proven, axis, steps } = found;
  return { arrangement: "lines", count, bound, proven, axis, mats, setOut: setOut(hall, laid), steps };
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

function mustBeAllowed(hall: Hall, floor: Floor, mats: readonly PlacedMat[], count: number): void {
  const faults = checkPlaced(floor, hall.mat, hall.gaps, mats);
  if (faults.length === 0 && mats.length === count) return;
  const says = faults.slice(0, 3).map((fault) => `${fault.kind} (${fault.pieces.join(", ")})`);
  throw new Error(`not a plan for “${hall.name}”: ${mats.length} of ${count} mats; ${says.join("; ")}`);
}
