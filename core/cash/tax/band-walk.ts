import { exactNumber, type Minor, roundToMinor } from "#core/words";
import type { Fraction } from "fraction.js";
import type { Band } from "./tax-types.ts";

/** What lies in one band, and what is taken of it, to the coin. */
export type BandPart = { readonly coins: number; readonly rate: Fraction; readonly tax: Minor };

/** 30,000 over bands up to 37,700 at a fifth: one part of 30,000, tax 6,000. Empty parts are left out. */
export function bandWalk(coins: number, bands: readonly Band[]): readonly BandPart[] {
  let below = 0;
  return bands.flatMap(({ upTo, rate }) => {
    const top = upTo === null ? coins : Math.min(coins, upTo);
    const inside = Math.max(0, top - below);
    below = Math.max(below, top);
    if (inside === 0) return [];
    return [{ coins: inside, rate, tax: roundToMinor(exactNumber(inside).mul(rate)) }];
  });
}

export function bandTax(parts: readonly BandPart[]): number {
  return parts.reduce((sum, { tax }) => sum + tax, 0);
}
