import type { ExactMinor } from "#core/words";
import type { Fraction } from "fraction.js";
import type { PricedRung } from "../priced-rung.ts";

/** One way to pay: a 10-pass of 85.00, 8.50 a class, by which 0.3 of the people on the mats come. */
export type Tier = Omit<PricedRung, "floor"> & {
  readonly perClass: ExactMinor;
  /** the least a class can bring by it: its floor where people choose, else what a class brings */
  readonly least: ExactMinor;
  /** of the people on the mats; 0 when nobody pays so */
  readonly share: Fraction;
};
