import type { EveningMinutes, Payer } from "#core/price";
import type { Minor } from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import type { Fraction } from "fraction.js";

export type Closure = DateSpan & { readonly why: string };

/** A class document that has been read and found sound, in the currency of the practice. */
export type ClassParts = {
  /** 1 is Monday */
  readonly weekday: number;
  readonly minutes: EveningMinutes;
  readonly travelCost: Minor;
  /** music, cover and other costs of a session */
  readonly otherCost: Minor;
  readonly perHead: Minor;
  readonly payers: readonly Payer[];
  readonly heads: Fraction;
  readonly year: DateSpan;
  readonly closures: readonly Closure[];
  readonly fixedPerYear: Minor;
};
