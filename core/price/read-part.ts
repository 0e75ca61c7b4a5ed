import { type Result, readExact } from "#core/words";
import type { Fraction } from "fraction.js";

/** A part of a whole that never takes all of it: 0.25 is a quarter. Problem: "share-out-of-range". */
export function readPart(share: number, place: string): Result<Fraction> {
  const says = `A share of ${share} cannot be meant.`;
  const next = "Give a share from 0 to 0.95: 0.25 is a quarter.";
  return readExact(share, place, { least: 0, most: 0.95 }, { code: "share-out-of-range", says, next });
}
