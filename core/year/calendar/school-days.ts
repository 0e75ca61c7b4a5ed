import type { BookedDocument, DayListDocument } from "../year-document.ts";

export type SchoolDays = {
  readonly days: DayListDocument["days"];
  /** titles of what seems to be no holiday, like a sports day, and of what lasts hours */
  readonly leftOut: readonly string[];
};

const HOLIDAY = /holiday|half[ -]?term|vacation|break|recess|inset|no school|school closed|closed to/i;
const TERM = /\b(?:begins|starts|ends|finishes|opens|reopens|returns?|back to)\b/i;

/**
 * Days off out of a school's calendar: whole days whose title says that there is no school. A sports day stands in it
 * too, and the day on which a term begins; they are left out and told.
 */
export function schoolDays(booked: readonly BookedDocument[]): SchoolDays {
  return {
    days: booked.filter(isOff).map(({ title, from, until }) => ({ from, until, why: title })),
    leftOut: [...new Set(booked.filter((it) => !isOff(it)).map(({ title }) => title))],
  };
}

function isOff({ title, from }: BookedDocument): boolean {
  return !from.includes("T") && HOLIDAY.test(title) && !TERM.test(title);
}
