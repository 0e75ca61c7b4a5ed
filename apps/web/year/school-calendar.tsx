import type { YearQuestion } from "#app/views";
import { schoolDays, type YearPlan } from "#core/year";
import { CalendarFileField } from "./calendar-file-field.tsx";
import { firstTitles } from "./first-titles.ts";

type Props = {
  readonly document: YearQuestion["document"];
  readonly put: (days: YearPlan["school"]["days"]) => void;
};

/** School holidays out of the school's own calendar; what seems to be none is told. */
export function SchoolCalendar({ document, put }: Props) {
  return (
    <CalendarFileField
      label="The school’s calendar, as a file (.ics)"
      document={document}
      says={(booked) => {
        const { days, leftOut } = schoolDays(booked);
        const left = leftOut.length === 0 ? "" : ` Left out as no holiday${firstTitles(leftOut)}`;
        const count = days.length === 1 ? "1 holiday" : `${days.length} holidays`;
        return `has ${count} in this year${firstTitles(days.map(({ why }) => why))}${left}`;
      }}
      button={(booked) => (schoolDays(booked).days.length === 0 ? null : "Take these in")}
      use={(booked) => put(schoolDays(booked).days)}
    />
  );
}
