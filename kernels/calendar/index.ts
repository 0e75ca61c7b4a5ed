export { type Ahead, beforeStart } from "./before-start.ts";
export { dateOfDay, dayNumber, dayNumberOf, weekdayOfDay } from "./day-number.ts";
export { type DateSpan, spanCovering } from "./date-span.ts";
export { monthKey } from "./month-key.ts";
export { readPlainDate } from "./plain-date.ts";
export { readPlainTime } from "./plain-time.ts";
export { weeklyDates } from "./weekly-dates.ts";
export { type WeeklyRecurrence, weeklyRecurrence } from "./weekly-recurrence.ts";
export { isZone, zonedStart } from "./zoned-start.ts";
