import { bad, type LengthUnits, type Millimetres, parseLength, problem, type Result } from "#core/words";
import type { TypedLength } from "./measuring.ts";

/** A centimetre: less is a slip of the thumb. Millimetres. */
const SHORTEST = 10;

/**
 * The length that was typed, feet and inches in two boxes or anything that reads as a length in the first. Problems:
 * those of `parseLength`, and "wall-too-short" under a centimetre.
 */
export function readTypedLength(
  { length, inches }: TypedLength,
  units: LengthUnits,
  place: string,
): Result<Millimetres> {
  const read = parseLength(typedText({ length, inches }, units), units, place);
  if (!read.ok || read.value >= SHORTEST) return read;
  const says = "That is less than a centimetre.";
  return bad(problem("wall-too-short", place, says, "Give the length that you measured."));
}

export function isBlank({ length, inches }: TypedLength): boolean {
  return length.trim() === "" && inches.trim() === "";
}

function typedText({ length, inches }: TypedLength, units: LengthUnits): string {
  if (units === "metric" || inches.trim() === "") return length;
  return `${length.trim() === "" ? "0" : length.trim()} ft ${inches.trim()} in`;
}
