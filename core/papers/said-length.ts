import { formatLength, formatLengthShort, type LengthUnits } from "#core/words";

/** "7.25 m", "23 ft 9 1/2 in". */
export function saidLength(millimetres: number, units: LengthUnits): string {
  return formatLength(millimetres, units);
}

/** For the drawing: "7.25", or 23' 9½" with the signs that the face of the paper has. */
export function drawnLength(millimetres: number, units: LengthUnits): string {
  return formatLengthShort(millimetres, units).replace("′", "'").replace("″", '"');
}
