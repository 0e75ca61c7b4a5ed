/** What moves: the place of a flow in the sums. */
export const flowKinds = [
  "takings",
  "passes",
  "pay",
  "session costs",
  "other in",
  "other out",
  "private in",
  "private out",
  "tax",
] as const;
export type FlowKind = (typeof flowKinds)[number];

/** 80.00 pounds on 12 January: { date: "2027-01-12", coins: 8000, … }; what goes out is below nought. */
export type Flow = {
  readonly date: string;
  readonly coins: number;
  readonly kind: FlowKind;
  readonly name: string;
  /** it counts for tax */
  readonly business: boolean;
};

/** What is owed in classes after a day: sold with passes and not yet taught. */
export type OwedAfter = { readonly date: string; readonly coins: number };
