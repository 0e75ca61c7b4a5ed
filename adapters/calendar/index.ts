export { type CalendarFile, readCalendarFile } from "./read-calendar-file.ts";
export { type CalendarHead, writeCalendarFile } from "./write-calendar-file.ts";
