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
