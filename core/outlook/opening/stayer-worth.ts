import type { CurrencyCode, ExactMinor, Minor } from "#core/words";
import { exactNumber } from "#core/words";
import { Fraction } from "fraction.js";

/** Somebody who stays: 8.00 each time, 0.20 spent on her, two sessions of three, one in fifty stops each week. */
export type Stayer = {
  readonly currency: CurrencyCode;
  readonly yielded: Minor;
  readonly perHead: Minor;
  readonly attendance: number;
  readonly leaving: number;
  readonly sessions: number;
};

export type StayerWorth = {
  readonly visits: number;
  /** visits × (y − v), in minor units; right only while there is an empty mat for her */
  readonly worth: ExactMinor;
};

/**
 * The visits expected of one person who has decided to stay, a·Σ (1 − d)^k over the weeks k = 1 … T looked ahead,
 * and what they leave. Method: trade F24.
 */
export function stayerWorth({ yielded, perHead, attendance, leaving, sessions }: Stayer): StayerWorth {
  const keep = 1 - leaving;
  // the geometric sum, also where nobody ever leaves
  const weeks = leaving === 0 ? sessions : (keep * (1 - keep ** sessions)) / leaving;
  const visits = attendance * weeks;
  const hundredths = exactNumber(Number(visits.toFixed(4)));
  return { visits, worth: new Fraction(yielded - perHead).mul(hundredths) };
}
