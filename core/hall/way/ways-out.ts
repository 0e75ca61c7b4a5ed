// Example: doors marked "no" and "not said": the second alone. Doors marked "yes", "no" and "not said": the first alone.
// Invariant: marking doors never makes more of them count than were drawn.
import type { DoorSwing, KeepClear } from "../hall.ts";

/** A zone with the leaf that it was drawn for. */
export type DoorZone = KeepClear & { readonly door: DoorSwing };

/**
 * The doors that count as ways out: those that are marked so, or, while none is, every door that is not marked as
 * none. In a hall that says nothing of its doors every door counts.
 */
export function waysOut(keepClear: readonly KeepClear[]): readonly DoorZone[] {
  const doors = keepClear.filter(isDoor).filter(({ door }) => door.wayOut !== false);
  const marked = doors.filter(({ door }) => door.wayOut === true);
  return marked.length > 0 ? marked : doors;
}

function isDoor(zone: KeepClear): zone is DoorZone {
  return zone.door !== undefined;
}
