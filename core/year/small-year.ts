import { type YearAnswer, yearAnswer } from "./year-answer.ts";
import type { YearDocumentInput } from "./year-document.ts";

/** For tests: a Tuesday class in one hall, from Tuesday 1 September 2026 to Tuesday 31 August 2027, and nothing off. */
export const evening: YearDocumentInput["classes"][number] = {
  id: "tuesday",
  name: "Tuesday evening",
  hall: "barn",
  start: "18:30",
  minutes: { before: 20, teach: 75, after: 15 },
  weekday: 2,
};

export const smallYear: YearDocumentInput = {
  from: "2026-09-01",
  until: "2027-08-31",
  zone: "Europe/London",
  halls: [{ id: "barn", name: "Tithe Barn Hall" }],
  classes: [evening],
};

/** For tests: the answer to that year with some of it changed; throws on a problem. */
export function smallAnswer(change: Partial<YearDocumentInput> = {}): YearAnswer {
  const read = yearAnswer({ ...smallYear, ...change });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}
