// Example: a hall without a name and with "0 people" on its notice still has a floor, so its mats are drawn.
// Invariant: only what is wrong with the floor, the mats and the gaps keeps the mats from being drawn.
import { type Hall, type HallDocument, hallFromDocument } from "#core/hall";
import type { Problem } from "#core/words";
import { type FloorPart, withFloorPart } from "./floor-part.ts";

export type SoundHall = { readonly hall: Hall | null; readonly problems: readonly Problem[] };

/** The hall to plan for, or what keeps it from being planned. The rest of the document has its own place to be mended. */
export function soundHall(document: HallDocument, part: FloorPart): SoundHall {
  const { postedCapacity: _posted, peopleNotOnMats: _others, ...rest } = withFloorPart(document, part);
  const read = hallFromDocument({ ...rest, name: rest.name.trim() === "" ? "The hall" : rest.name });
  return read.ok ? { hall: read.value, problems: [] } : { hall: null, problems: read.problems };
}
