import { demandAnswer } from "#core/outlook";
import { datesInWords } from "./date-words.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { missing, type SheetPart, saidOn, unsound } from "./sheet-part.ts";

export type DemandPart = SheetPart<{ readonly full: number; readonly sessions: number }>;

/** How many wanted to come, where full evenings hide it. */
export function demandPart(input: OutlookSheetInput): DemandPart {
  const { happened, capacity } = input;
  if (happened.sessions.every((it) => it.cancelled === true)) {
    return missing("No session is written down yet.", "Add the sessions that were held.");
  }
  const places = happened.capacity ?? capacity?.capacity;
  const read = demandAnswer({
    ...(places === undefined ? {} : { capacity: places }),
    sessions: happened.sessions,
  });
  if (!read.ok) {
    const { locale } = input.practice;
    return unsound(read.problems.map((it) => ({ ...it, says: datesInWords(it.says, locale) })));
  }
  const { sentences, working, full, sessions } = read.value.json;
  return {
    ...saidOn(input, [], sentences, [{ title: "How many want to come", lines: working }]),
    full,
    sessions,
  };
}
