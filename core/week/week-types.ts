import type { CurrencyCode, Minor } from "#core/words";
import type { candidateKinds } from "./week-document.ts";

// Tuesday 18:30 at Tithe Barn Hall, 20 + 75 + 15 minutes: access 18:10 to 20:00, so accessFrom 1090, accessUntil 1200.
// Times are whole minutes since midnight; accessFrom ≤ start < end ≤ accessUntil within one day.

export type Candidate = {
  readonly id: string;
  readonly name: string;
  readonly kind: (typeof candidateKinds)[number];
  /** position in the week's places */
  readonly place: number;
  /** 1 is Monday */
  readonly weekday: number;
  readonly accessFrom: number;
  readonly start: number;
  readonly end: number;
  readonly accessUntil: number;
  readonly preparation: number;
  /** a session, before travel; may be below nought */
  readonly contribution: Minor;
  /** a year */
  readonly sessions: number;
  readonly fixed: boolean;
};

export type Place = { readonly id: string; readonly name: string };

/** One way from place to place; `guess` where it was worked out from the map. */
export type Way = { readonly minutes: number; readonly km: number; readonly guess: boolean };

/** When she is not free: minutes since midnight, from < until within one day. */
export type Commitment = {
  readonly name: string;
  readonly weekday: number;
  readonly from: number;
  readonly until: number;
};

/** null: no such limit */
export type WeekLimits = {
  readonly classesAWeek: number | null;
  readonly classesADay: number | null;
  readonly backToBack: number | null;
  readonly evenings: number | null;
  readonly freeDays: number;
  readonly restMinutes: number;
  /** the three below say what the limits above mean; they are no limits themselves */
  readonly breakMinutes: number;
  readonly eveningFrom: number;
  readonly buffer: number;
};

/** Prices a year, in coins. */
export type Wish =
  | { readonly kind: "day-free" | "evening-free"; readonly weekday: number; readonly price: Minor }
  | { readonly kind: "rather-not"; readonly candidate: number; readonly price: Minor }
  | { readonly kind: "fewer-classes"; readonly than: number; readonly price: Minor };

export type Week = {
  readonly currency: CurrencyCode;
  readonly home: number;
  readonly places: readonly Place[];
  /** ways[from][to]; null where nobody stated one and none is needed */
  readonly ways: readonly (readonly (Way | null)[])[];
  readonly perKm: Minor;
  readonly perHour: Minor;
  readonly homeBetween: number;
  readonly candidates: readonly Candidate[];
  readonly commitments: readonly Commitment[];
  readonly limits: WeekLimits;
  readonly wishes: readonly Wish[];
  readonly target: Minor | null;
  readonly guesses: readonly string[];
};
