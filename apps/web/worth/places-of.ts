// Example: zones "Way out", "Place 1 …" (bay 1), "Way to: Place 1 …" (way 1) are one place, number 1.
import type { Hall, KeepClear } from "#core/hall";

export type Place = { readonly number: number; readonly bay: KeepClear };

/** The places for wheels and chairs that a hall has, by their bays. */
export function placesOf({ keepClear }: Pick<Hall, "keepClear">): readonly Place[] {
  return keepClear.flatMap((zone) =>
    zone.place?.part === "bay" ? [{ number: zone.place.number, bay: zone }] : [],
  );
}

/** The zones without a place and its way. */
export function withoutPlace(keepClear: readonly KeepClear[], number: number): readonly KeepClear[] {
  return keepClear.filter((zone) => zone.place?.number !== number);
}

/** The name of the next place: on the drawing and in the lists. */
export function nextPlaceLabel(hall: Pick<Hall, "keepClear">): string {
  const number = 1 + Math.max(0, ...placesOf(hall).map((it) => it.number));
  return `Place ${number} for a wheelchair or a chair`;
}
