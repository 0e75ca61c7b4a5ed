import { cornerName } from "#core/hall";
import type { Trace } from "./measuring.ts";
import type { Marking } from "./trace-steps.ts";

/** What was marked last and what the next mark is. */
export function markingWords(trace: Trace, marking: Marking): string {
  if (marking === "corners") {
    const count = trace.corners.length;
    const last = count === 0 ? "" : `Corner ${cornerName(count - 1)} is marked. `;
    return `${last}Mark corner ${cornerName(count)}${count >= 3 ? ", if there is one more" : ""}.`;
  }
  const name = marking === "known" ? "the distance that you know" : "the second distance";
  const { from, to } = trace[marking];
  if (from === null) return `Mark one end of ${name}.`;
  if (to === null) return `Mark the other end of ${name}.`;
  return `Both ends of ${name} are marked. Another mark moves the nearer end.`;
}
