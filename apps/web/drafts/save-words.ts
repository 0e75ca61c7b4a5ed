import type { SaveState } from "./draft.ts";

/** The line that says where her work is: "Saved 18:02." Times as HH:MM of the device. */
export function saveWords(state: SaveState, hasBadFields: boolean, onDevice = true): string {
  const fields = hasBadFields && onDevice ? " Fields that need mending are kept on this device." : "";
  const where = onDevice ? "Kept on this device." : "This device keeps nothing: do not close the page.";
  switch (state.kind) {
    case "saved":
      return `${state.at === null ? "Saved." : `Saved ${clock(state.at)}.`}${fields}`;
    case "waiting":
    case "sending":
      return "Saving …";
    case "kept":
      return `Not saved: the server does not answer. ${where}`;
    case "refused":
      if (isNotDrawn(state)) return `${where.slice(0, -1)} until its floor is drawn.`;
      return `Not saved: ${state.problems[0]?.says ?? "the server refused it."} ${where}`;
    case "clash":
      return `Not saved: this was changed somewhere else. ${where}`;
  }
}

/** True of a line that must be heard, not only seen. */
export function isTrouble(state: SaveState): boolean {
  return state.kind === "kept" || (state.kind === "refused" && !isNotDrawn(state)) || state.kind === "clash";
}

/** A hall that is only just begun is nobody's mistake: it is saved once it has a floor. */
function isNotDrawn(state: SaveState): boolean {
  return state.kind === "refused" && state.problems.every(({ code }) => code === "not-drawn");
}

function clock(iso: string): string {
  const at = new Date(iso);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}
