import type { SaveState } from "./draft.ts";

/** The line that says where her work is: "Saved 18:02." Times as HH:MM of the device. */
export function saveWords(state: SaveState, hasBadFields: boolean): string {
  const fields = hasBadFields ? " Fields that need mending are kept on this device." : "";
  switch (state.kind) {
    case "saved":
      return `${state.at === null ? "Saved." : `Saved ${clock(state.at)}.`}${fields}`;
    case "waiting":
    case "sending":
      return "Saving …";
    case "kept":
      return "Not saved: the server does not answer. Kept on this device.";
    case "refused":
      return `Not saved: ${state.problems[0]?.says ?? "the server refused it."} Kept on this device.`;
    case "clash":
      return "Not saved: this was changed somewhere else. Kept on this device.";
  }
}

/** True of a line that must be heard, not only seen. */
export function isTrouble(state: SaveState): boolean {
  return state.kind === "kept" || state.kind === "refused" || state.kind === "clash";
}

function clock(iso: string): string {
  const at = new Date(iso);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}
