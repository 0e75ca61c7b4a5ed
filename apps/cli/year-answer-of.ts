import { type MoneyJson, moneyAnswer } from "#core/cash";
import { type YearAnswer, yearAnswer } from "#core/year";
import { bad, good, problem, readDocument, type Result } from "#core/words";
import { amountWriter } from "./amount-writer.ts";
import { type YearFile, yearFileSchema } from "./year-document.ts";

export type YearRead = {
  readonly calendar: YearAnswer | null;
  readonly money: MoneyJson | null;
  readonly unused: readonly string[];
};

/** Reads a year file. Problems: those of documents, at their places in the file. */
export function readYearFile(
  input: unknown,
): Result<{ readonly file: YearFile; readonly unused: readonly string[] }> {
  const read = readDocument(yearFileSchema, input);
  if (!read.ok) return read;
  const { value: file, unused } = read.value;
  return file.calendar === undefined && file.money === undefined ? bad(empty()) : good({ file, unused });
}

/** The answers to both parts of a year; money takes the dates of its classes from the calendar. */
export function yearAnswerOf({ calendar, money }: YearFile, unused: readonly string[]): Result<YearRead> {
  const dates = calendar === undefined ? null : within("calendar", yearAnswer(calendar));
  if (dates !== null && !dates.ok) return dates;
  const joined = money === undefined ? null : withDates(money, dates?.value ?? null);
  const sums = joined === null ? null : within("money", moneyAnswer(joined, amountWriter));
  if (sums !== null && !sums.ok) return sums;
  return good({ calendar: dates?.value ?? null, money: sums?.value.json ?? null, unused });
}

function withDates(money: NonNullable<YearFile["money"]>, calendar: YearAnswer | null) {
  const known = new Map(calendar?.json.classes.map(({ id, dates }) => [id, dates.map(({ date }) => date)]));
  const work = money.work.map((it) => {
    const dates = known.get(it.id);
    return it.dates !== undefined || it.weekly !== undefined || dates === undefined ? it : { ...it, dates };
  });
  return { ...money, work };
}

function within<Value>(part: string, read: Result<Value>): Result<Value> {
  if (read.ok) return read;
  const at = (place: string): string => (place === "" ? part : `${part}.${place}`);
  return bad(...read.problems.map((it) => ({ ...it, place: at(it.place) })));
}

function empty() {
  const says = "The document has neither a calendar nor money.";
  return problem("year-empty", "", says, "Give one of the two, or both; hallful schema year describes them.");
}
