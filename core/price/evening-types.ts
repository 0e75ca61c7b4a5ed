import type { HireTerms } from "#core/hall";
import type { CurrencyCode, ExactMinor, Minor, Minutes, WorkingLine } from "#core/words";
import type { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";

/** One kind of payer: 0.4 of the people pay 10.00 once, 0.3 come on a 10-pass of 85.00, 8.50 a class. */
export type Payer = {
  /** the key of the mix: "single", "pass-10", "concession", "free" */
  readonly key: string;
  /** of the people on the mats, exact; the shares of all payers add to exactly 1 */
  readonly share: Fraction;
  /** what is paid at once, and for how many classes */
  readonly price: Minor;
  readonly classes: number;
};

export type EveningMinutes = {
  readonly setUp: Minutes;
  readonly class: Minutes;
  readonly packDown: Minutes;
  readonly travel: Minutes;
  /** preparation, messages and money for this session */
  readonly other: Minutes;
};

/** An evening document that has been read and found sound. */
export type Evening = {
  readonly currency: CurrencyCode;
  readonly date: Temporal.PlainDate;
  readonly hire: HireTerms;
  readonly minutes: EveningMinutes;
  readonly travelCost: Minor;
  readonly otherCost: Minor;
  readonly perHead: Minor;
  readonly payers: readonly Payer[];
  /** people on an ordinary evening; a mean like 9.5 is allowed */
  readonly heads: Fraction;
  /** fixed costs spread over the sessions of a year; null when none are stated */
  readonly fixed: { readonly perYear: Minor; readonly sessions: Fraction } | null;
};

export type EveningAnswer = {
  readonly currency: CurrencyCode;
  readonly date: Temporal.PlainDate;
  readonly neededMinutes: Minutes;
  readonly chargedMinutes: Minutes;
  readonly hire: Minor;
  readonly cost: Minor;
  readonly costPerHead: Minor;
  /** average collected per person attending, exact, in minor units */
  readonly yield: ExactMinor;
  /** heads; null is never */
  readonly breakEven: number | null;
  readonly heads: Fraction;
  readonly contribution: ExactMinor;
  readonly doorToDoorMinutes: Minutes;
  readonly otherMinutes: Minutes;
  /** contribution per hour of door-to-door time alone, in minor units; null when that takes no time */
  readonly perDoorToDoorHour: ExactMinor | null;
  /** contribution less the fixed share, per hour of door-to-door time and preparation; minor units */
  readonly trueHourly: ExactMinor | null;
  /** contribution at 0 … most heads */
  readonly table: readonly HeadsLine[];
  readonly working: {
    readonly hire: readonly WorkingLine[];
    readonly cost: readonly WorkingLine[];
    readonly yield: readonly WorkingLine[];
    readonly breakEven: readonly WorkingLine[];
    readonly hourly: readonly WorkingLine[];
  };
};

export type HeadsLine = {
  readonly heads: number;
  readonly takings: ExactMinor;
  readonly contribution: ExactMinor;
};
