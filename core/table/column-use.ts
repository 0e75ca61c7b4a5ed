/** What a column is for. Visits have a person and a date in each row; heads a date and how many came. */
export type VisitColumn = "person" | "surname" | "date" | "amount";
export type HeadsColumn = "date" | "heads" | "capacity" | "turnedAway" | "waiting" | "newcomers";
export type ColumnUse = VisitColumn | HeadsColumn;
