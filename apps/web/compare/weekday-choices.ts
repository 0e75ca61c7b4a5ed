import { weekdayName } from "../words/dates.ts";

/** The days of the week as a field offers them. */
export const weekdayChoices = [1, 2, 3, 4, 5, 6, 7].map((day) => ({
  value: String(day),
  label: weekdayName(day),
}));
