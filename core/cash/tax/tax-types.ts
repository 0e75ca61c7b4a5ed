import type { CurrencyCode, Minor } from "#core/words";
import type { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";

/** From nought up to 37,700 at a fifth, then up to nobody's limit at two fifths: the last `upTo` is null. */
export type Band = { readonly upTo: Minor | null; readonly rate: Fraction };

export type TaxSource = { readonly title: string; readonly mark: string; readonly note: string };

type Heading = {
  readonly id: string;
  readonly place: string;
  readonly name: string;
  readonly currency: CurrencyCode;
  readonly from: Temporal.PlainDate;
  readonly until: Temporal.PlainDate;
  readonly sources: readonly TaxSource[];
};

export type UkTable = Heading & {
  readonly rules: "uk";
  readonly allowance: { readonly amount: Minor; readonly taperFrom: Minor };
  readonly bands: readonly Band[];
  readonly class4: {
    readonly from: Minor;
    readonly upTo: Minor;
    readonly rate: Fraction;
    readonly above: Fraction;
  };
  readonly class2: { readonly aWeek: Minor; readonly smallProfits: Minor };
  readonly tradingAllowance: Minor;
  readonly onAccount: { readonly from: Minor; readonly atSource: Fraction };
};

export type Filing = "single" | "joint";

export type UsTable = Heading & {
  readonly rules: "us";
  readonly selfEmployment: {
    readonly share: Fraction;
    readonly social: Fraction;
    readonly socialUpTo: Minor;
    readonly medicare: Fraction;
    readonly least: Minor;
    readonly deductible: Fraction;
    readonly extra: { readonly rate: Fraction; readonly single: Minor; readonly joint: Minor };
  };
  readonly deduction: Readonly<Record<Filing, Minor>>;
  readonly bands: Readonly<Record<Filing, readonly Band[]>>;
  readonly instalmentsFrom: Minor;
};

export type TaxTable = UkTable | UsTable;

/** What is asked of the tax of a year besides the takings and costs. */
export type TaxQuestion = {
  readonly tables: readonly TaxTable[];
  readonly rules: "uk" | "us";
  readonly filing: Filing;
  readonly other: Minor;
  readonly atSource: Minor | null;
  readonly stateRate: Fraction;
  readonly registered: boolean;
  readonly soFar: { readonly income: Minor; readonly costs: Minor };
  readonly paidSoFar: Minor;
  readonly last: { readonly bill: Minor; readonly onAccount: Minor } | null;
  readonly pot: Minor | null;
};

/** Takings and costs of a tax year, in coins. */
export type TradingYear = { readonly income: number; readonly costs: number };
