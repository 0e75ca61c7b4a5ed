import type { CurrencyCode, Minor } from "#core/words";
import type { CountModel } from "#kernels/statistics";
import type { Fraction } from "fraction.js";
import type { DemandCurve, PricePoint } from "../curve/demand-curve.ts";
import type { PriceRange } from "../curve/price-curve.ts";
import type { SurveyRow } from "../curve/read-survey.ts";
import type { MonthlySpread } from "../ladder/course-terms.ts";
import type { Tier } from "../ladder/tier.ts";
import type { StudioClass } from "../studio/own-or-studio.ts";

export type NamedStudio = StudioClass & { readonly name: string };

/** A price document that has been read and found sound. */
export type PriceQuestion = {
  readonly currency: CurrencyCode;
  readonly cost: Minor;
  readonly perHead: Minor;
  readonly tiers: readonly Tier[];
  readonly monthly: MonthlySpread | null;
  readonly demand: CountModel;
  readonly capacity: number;
  readonly sessions: number;
  /** null when it is not stated; above 0 */
  readonly doorToDoor: number | null;
  readonly deepest: Fraction;
  readonly rises: readonly Minor[];
  readonly target: { readonly perHour: Minor; readonly taxShare: Fraction } | null;
  readonly points: readonly PricePoint[];
  readonly curves: readonly DemandCurve[];
  readonly lookedAt: PriceRange | null;
  readonly survey: readonly SurveyRow[];
  readonly studio: NamedStudio | null;
};
