import type { CurrencyCode, ExactMinor, Minor, Minutes } from "#core/words";

/** One line of a sum as a person would set it out: words, the sum in figures, the amount. */
export type WorkingLine = {
  readonly label: string;
  /** "95 min, rounded up to 30s" or "2 h × 14.00"; empty when the amount stands alone */
  readonly sum: string;
  /** formatted plainly without currency sign: "28.00", "4.1", "110 min" */
  readonly amount: string;
  /** total lines are ruled off above */
  readonly total?: boolean;
};

export type EveningAnswer = {
  readonly currency: CurrencyCode;
  readonly neededMinutes: Minutes;
  readonly chargedMinutes: Minutes;
  readonly hire: Minor;
  readonly cost: Minor;
  readonly costPerHead: Minor;
  /** average collected per person attending, exact, in minor units */
  readonly yield: ExactMinor;
  /** heads; null is never */
  readonly breakEven: number | null;
  readonly contribution: ExactMinor;
  readonly doorToDoorMinutes: Minutes;
  /** contribution less the fixed share, per hour of door-to-door time and preparation; minor units */
  readonly trueHourly: ExactMinor | null;
  /** contribution at 0 … most heads */
  readonly table: readonly {
    readonly heads: number;
    readonly takings: ExactMinor;
    readonly contribution: ExactMinor;
  }[];
  readonly working: {
    readonly hire: readonly WorkingLine[];
    readonly cost: readonly WorkingLine[];
    readonly yield: readonly WorkingLine[];
    readonly breakEven: readonly WorkingLine[];
    readonly hourly: readonly WorkingLine[];
  };
};
