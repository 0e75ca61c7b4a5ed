// Example: at 0.035 px a millimetre and 150 px of room the bar is 2 m long, 70 px; 5 m would need 175 px.
import { type LengthUnits, MM_PER_FOOT } from "#core/words";

export type ScaleBar = { readonly pixels: number; readonly says: string };

const metres = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
const feet = [0.5, 1, 2, 5, 10, 20, 50, 100];

/** The longest round length whose bar fits into `room` pixels; the shortest one when none does. */
export function scaleBar(pixelsPerMillimetre: number, room: number, units: LengthUnits): ScaleBar {
  const step = units === "metric" ? 1000 : MM_PER_FOOT;
  const lengths = units === "metric" ? metres : feet;
  const fitting = lengths.filter((it) => it * step * pixelsPerMillimetre <= room);
  const length = fitting.at(-1) ?? lengths[0] ?? 1;
  return {
    pixels: length * step * pixelsPerMillimetre,
    says: units === "metric" ? `${length} m` : `${length} ft`,
  };
}
