import type { Fraction } from "fraction.js";

export type SlotMinutes = { readonly setUp: number; readonly class: number; readonly packDown: number };

export type SlotTimes = {
  readonly setUp: number;
  readonly packDown: number;
  readonly needed: number;
  /** the needed time up to the next multiple of the increment */
  readonly stepped: number;
  readonly charged: number;
};

export type SlotAmounts = {
  readonly hall: Fraction;
  readonly setUp: Fraction | null;
  readonly heating: Fraction | null;
};
