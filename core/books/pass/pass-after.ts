import { applyPassEvent } from "./apply-pass-event.ts";
import type { PassEvent } from "./pass-event.ts";
import type { PassState } from "./pass-state.ts";

/** The pass after its events, the sale first. Throws when they cannot have happened. */
export function passAfter(events: readonly PassEvent[]): PassState {
  const state = events.reduce<PassState | null>(applyPassEvent, null);
  if (state === null) throw new RangeError("a pass begins with its sale");
  return state;
}
