/** How the page writes what the answer holds. */
export type MoneyWords = {
  /** a decimal string as "£28.48" */
  readonly amount: (text: string) => string;
  /** whole major units, for the side of a plot */
  readonly major: (major: number) => string;
  /** "2027-01" as "January 2027" */
  readonly month: (month: string) => string;
  /** a sentence with its dates and months in words */
  readonly says: (sentence: string) => string;
};
