import type { ComingAnswerQuestion } from "#core/outlook";
import { type DateStyle, type NotUsed, readVisits, visitsShape } from "#core/table";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given } from "./command.ts";
import { asOption, type HowRead, readTableFile, rowsUnusable } from "./read-table-file.ts";
import type { World } from "./world.ts";

/** The visits of a file, how it was read, and the rows that were not. */
export type VisitsFile = {
  readonly records: ComingAnswerQuestion;
  readonly read: HowRead & {
    readonly dates: DateStyle;
    readonly used: number;
    readonly writtenTwoWays: readonly string[];
  };
  readonly notUsed: readonly NotUsed[];
};

/** Problems: those of the table and its dates; "rows-unusable", "closed-unreadable". */
export async function readVisitsFile(name: string, given: Given, world: World): Promise<Result<VisitsFile>> {
  const span = readSpan(given);
  if (!span.ok) return span;
  const file = await readTableFile(name, given, world, visitsShape);
  if (!file.ok) return file;
  const { table, columns, order, read } = file.value;
  const found = readVisits(table, columns, order);
  if (!found.ok) return bad(...found.problems.map(asOption));
  const { visits, notUsed, dates, writtenTwoWays } = found.value;
  if (visits.length === 0) return bad(rowsUnusable(notUsed));
  return good({
    records: { ...span.value, visits },
    read: { ...read, dates, used: visits.length, writtenTwoWays },
    notUsed,
  });
}

/** Which days count: until when, without which closures. Problem: "closed-unreadable". */
function readSpan({ values, flags }: Given): Result<Omit<ComingAnswerQuestion, "visits">> {
  const { until, "new-since": newSince } = values;
  const closed = (values["closed"] ?? "").split(",").filter((it) => it !== "");
  const spans = closed.map((text) => /^\s*(\S+?)\.\.(\S+?)\s*$/.exec(text));
  const problems = closed.filter((_, at) => spans[at] === null).map(closedUnreadable);
  if (problems.length > 0) return bad(...problems);
  return good({
    closed: spans.map((span) => ({ from: span?.[1] ?? "", until: span?.[2] ?? "" })),
    emptyWeeksClosed: flags.has("empty-weeks-closed"),
    ...(until === undefined ? {} : { until }),
    ...(newSince === undefined ? {} : { newSince }),
  });
}

function closedUnreadable(text: string): Problem {
  const says = `“${text.slice(0, 40)}” does not say from when until when.`;
  return problem("closed-unreadable", "--closed", says, "Write it like 2026-08-03..2026-08-30.");
}
