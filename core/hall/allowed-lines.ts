import { checkPlaced, type Fault, type Floor } from "#kernels/packing";
import type { Hall } from "./hall.ts";
import type { LaidLines } from "./lay-lines.ts";
import type { PlacedMat } from "./mat-plan-types.ts";
import { setOut } from "./set-out.ts";
import { wholeCentimetres } from "./whole-centimetres.ts";

/**
 * The lines on whole centimetres where one of the ways of shifting them gives a plan that is allowed on `floor`; else
 * one in which some lines are, else as they are. Throws where not even that is allowed, which would be a fault of ours
 * and not of the hall.
 */
export function allowedLines(hall: Hall, floor: Floor, exact: LaidLines): LaidLines {
  let partly: LaidLines | undefined;
  for (const how of ["quickly", "carefully", "backwards"] as const) {
    const whole = wholeCentimetres(hall, floor, exact, how);
    if (faultsOf(hall, floor, whole.lines.flat()).length > 0) continue;
    if (setOut(hall, whole).toTheCentimetre) return whole;
    partly ??= whole;
  }
  if (partly !== undefined) return partly;
  mustBeAllowed(hall, floor, exact.lines.flat());
  return exact;
}

/** Throws with the first three faults of a plan that breaks its own rules. */
export function mustBeAllowed(hall: Hall, floor: Floor, mats: readonly PlacedMat[]): void {
  const faults = faultsOf(hall, floor, mats);
  if (faults.length === 0) return;
  const says = faults.slice(0, 3).map((fault) => `${fault.kind} (${fault.pieces.join(", ")})`);
  throw new Error(`not a plan for “${hall.name}”: ${says.join("; ")}`);
}

function faultsOf(hall: Hall, floor: Floor, mats: readonly PlacedMat[]): readonly Fault[] {
  return checkPlaced(floor, hall.mat, hall.gaps, mats);
}
