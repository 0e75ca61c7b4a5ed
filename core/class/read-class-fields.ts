import { bad, good, type Problem, problem, type Result } from "#core/words";
import { readPlainTime } from "#kernels/calendar";
import type { ClassDocument } from "./class-document.ts";

const LONGEST_NAME = 200;

/** Problems: "class-name-missing", "class-name-long". */
export function readName(name: string): Result<string> {
  if (name.trim() === "") {
    return bad(
      problem("class-name-missing", "name", "The class has no name.", "Give it one, like Tuesday evening."),
    );
  }
  if (name.length <= LONGEST_NAME) return good(name);
  const says = `The name has ${name.length} letters.`;
  return bad(problem("class-name-long", "name", says, `Keep it to ${LONGEST_NAME}.`));
}

/** Problem: "class-weekday". */
export function readWeekday(weekday: number): Result<number> {
  if (Number.isInteger(weekday) && weekday >= 1 && weekday <= 7) return good(weekday);
  const next = "Give a day from 1, Monday, to 7, Sunday.";
  return bad(problem("class-weekday", "weekday", `${weekday} is no day of the week.`, next));
}

/** Problem: "time-unreadable". */
export function readStart(start: string): Result<string> {
  if (readPlainTime(start) !== undefined) return good(start);
  const says = `“${start.slice(0, 40)}” is not a time of day.`;
  return bad(problem("time-unreadable", "start", says, "Write hours and minutes like 18:30."));
}

const MOST_PLACES = 1000;

/** A number of people or mats, or null where there is none. Problem: "places-out-of-range". */
export function readPlaces(places: number | null, place: string): Result<number | null> {
  if (places === null || (Number.isInteger(places) && places >= 0 && places <= MOST_PLACES))
    return good(places);
  const next = `Give a whole number from 0 to ${MOST_PLACES}, or leave it out.`;
  return bad(problem("places-out-of-range", place, `${places} places cannot be meant.`, next));
}

/** The class's own mat and gaps in metres. Problem: "mat-size-absurd". */
export function readMats(mats: ClassDocument["mats"]): Result<ClassDocument["mats"]> {
  if (mats === null) return good(null);
  const problems: readonly Problem[] = [
    ...outside(mats.mat.length, 0.1, 5, "mats.mat.length"),
    ...outside(mats.mat.width, 0.1, 5, "mats.mat.width"),
    ...outside(mats.gaps.side, 0, 10, "mats.gaps.side"),
    ...outside(mats.gaps.end, 0, 10, "mats.gaps.end"),
    ...outside(mats.gaps.wall, 0, 10, "mats.gaps.wall"),
  ];
  return problems.length > 0 ? bad(...problems) : good(mats);
}

function outside(metres: number, least: number, most: number, place: string): readonly Problem[] {
  if (metres >= least && metres <= most) return [];
  const next = `Give metres from ${least} to ${most}.`;
  return [problem("mat-size-absurd", place, `${metres} metres cannot be meant.`, next)];
}
