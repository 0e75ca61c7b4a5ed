export type { CalendarEntry } from "./calendar/calendar-entries.ts";
export type { CalendarEvent, CalendarNote, CalendarTime } from "./calendar/calendar-event.ts";
export { type HallBookings, hallBookings } from "./calendar/hall-bookings.ts";
export { schoolDays } from "./calendar/school-days.ts";
export { publicHolidays } from "./holidays/public-holidays.ts";
export { type Region, regions } from "./holidays/public-holiday.ts";
export { readDayList } from "./lists/read-day-list.ts";
export { drawingSvg } from "./picture/drawing-svg.ts";
export { monthDrawing } from "./picture/month-drawing.ts";
export type { Drawing, Shape } from "./picture/shape.ts";
export { yearDrawing } from "./picture/year-drawing.ts";
export type { PictureMonth, YearPicture } from "./picture/year-picture.ts";
export { type YearAnswer, yearAnswer } from "./year-answer.ts";
export {
  type BookedDocument,
  type YearDocument,
  type YearDocumentInput,
  type YearPlan,
  yearDocumentSchema,
  yearPlanSchema,
} from "./year-document.ts";
export type { ClassYearJson, YearCalendarJson } from "./year-json.ts";
