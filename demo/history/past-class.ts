/** What a class of the past is told from: its evenings with how many came and how many of them were new. */
export type PastClass = {
  readonly class: string;
  readonly name: string;
  readonly hall: string;
  /** HH:MM by the clock of the hall */
  readonly start: string;
  readonly minutes: number;
  readonly capacity: number;
  readonly posted: number;
  /** pence */
  readonly single: number;
  readonly concession: number;
  readonly pass: { readonly size: number; readonly price: number; readonly weeks: number };
  readonly evenings: readonly PastEvening[];
  /** dates after the last evening, already in the record and in part booked */
  readonly ahead: readonly string[];
};

export type PastEvening = { readonly date: string; readonly heads: number; readonly newcomers: number };
